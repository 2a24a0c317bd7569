import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import type { Edit } from '../../../engine/edit/edit'
import { movedParagraph, newParagraph } from '../../../engine/edit/handover'
import { historyOf, push, undo } from '../../../engine/edit/history'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Design } from '../../../engine/model/design'
import type { Handover, OwnParagraph } from '../../../engine/model/handover'
import { writeDesign } from '../../../engine/model/write'
import { design } from '../../build'

const set = (d: Design, handover: Partial<Handover>): Design => {
  const result = apply(d, { do: 'handover', set: handover })
  if (result.refused) throw new Error(result.why)
  return result.design
}
const paragraph = (id: string, after: string | null = null): OwnParagraph => ({
  id,
  heading: id,
  text: '',
  after,
})

test('what the installer adds is kept, read back alike, and leaves no trace when it is taken away', () => {
  const plain = design().build()
  const full = set(plain, {
    language: 'de',
    hidden: ['care', 'care'],
    paragraphs: [{ id: 'h1', heading: 'Tip', text: 'one\ntwo', after: 'storage' }],
  })
  expect(full.handover?.hidden).toEqual(['care'])
  const { design: back, problems } = readDesign(writeDesign(full))
  expect(problems).toEqual([])
  expect(back).toEqual(full)
  expect(writeDesign(full)).toContain('"handover"')
  const emptied = set(full, { hidden: [], paragraphs: [] })
  expect(emptied.handover).toEqual({ language: 'de' })
  expect(set(set(plain, { hidden: ['care'] }), { hidden: [] })).toEqual(plain)
})

test('an edit that changes nothing gives the same design; each edit is one step back', () => {
  const plain = set(design().build(), { hidden: ['care'] })
  expect(set(plain, { hidden: ['care'] })).toBe(plain)
  const next = set(plain, { language: 'de' })
  expect(undo(push(historyOf(plain), next, 'Change the language')).design).toBe(plain)
})

test('installer and contact are settings that a file need not have', () => {
  const plain = design().build()
  expect(writeDesign(plain)).not.toContain('installer')
  const edit: Edit = { do: 'settings', set: { installer: 'A. Smith', contact: 'one\ntwo' } }
  const result = apply(plain, edit)
  if (result.refused) throw new Error(result.why)
  expect(readDesign(writeDesign(result.design)).design?.settings).toMatchObject({
    installer: 'A. Smith',
    contact: 'one\ntwo',
  })
})

test.each([
  [[paragraph('h1'), paragraph('h1')], 'id of its own'],
  [[{ ...paragraph('h1'), heading: 'x'.repeat(201) }], '200 letters'],
  [[{ ...paragraph('h1'), text: 'x'.repeat(10001) }], '10000 letters'],
  [Array.from({ length: 201 }, (_, i) => paragraph(`h${i}`)), '200 paragraphs'],
])('refuses what cannot be kept', (paragraphs, why) => {
  const result = apply(design().build(), { do: 'handover', set: { paragraphs } })
  expect(result.refused && result.why).toContain(why)
})

test('a damaged entry of a file costs only itself, and is told', () => {
  const file = JSON.parse(writeDesign(set(design().build(), { language: 'de' })))
  file.handover.hidden = 7
  const { design: read, problems } = readDesign(JSON.stringify(file))
  expect(read?.handover).toEqual({ language: 'de' })
  expect(problems.map((p) => p.path)).toEqual(['handover.hidden'])
})

test('a new paragraph has an id that no other has', () => {
  const d = set(design().build(), { paragraphs: [paragraph('h2'), paragraph('x'), paragraph('h9')] })
  expect(newParagraph(d, 'care')).toEqual({ id: 'h10', heading: '', text: '', after: 'care' })
})

const CHAPTERS = ['a', 'b', 'c']

/** The whole order: chapters, and paragraphs after each, as they are read. */
const orderOf = (paragraphs: readonly OwnParagraph[]): string[] =>
  [null, ...CHAPTERS].flatMap((place) => [
    ...(place === null ? [] : [place]),
    ...paragraphs
      .filter((p) => (p.after === null || CHAPTERS.includes(p.after) ? p.after : 'c') === place)
      .map((p) => p.id),
  ])

test('moving swaps a paragraph with its neighbour in the whole order, and nothing else', () => {
  const lists = fc.array(fc.constantFrom(null, ...CHAPTERS, 'unknown'), { minLength: 1, maxLength: 6 })
  fc.assert(
    fc.property(lists, fc.nat(), fc.constantFrom(-1 as const, 1 as const), (places, pick, by) => {
      const before = places.map((after, i) => paragraph(`h${i}`, after))
      const { id } = before[pick % before.length]!
      const after = movedParagraph(before, id, by, CHAPTERS)
      const [was, now] = [orderOf(before), orderOf(after)]
      const at = was.indexOf(id)
      const to = at + by
      if (to < 0 || to >= was.length) {
        expect(after).toBe(before)
        return
      }
      const swapped = was.with(at, was[to]!).with(to, id)
      expect(now).toEqual(swapped)
    }),
  )
})
