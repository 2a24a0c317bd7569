import { describe, expect, test } from 'vitest'
import { KINDS } from '../../../engine/kinds/all'
import type { Design } from '../../../engine/model/design'
import { fuseColour, RATINGS } from '../../../engine/tables/fuseratings'
import type { Book, Piece } from '../../../engine/words/handover/book'
import { german } from '../../../engine/words/handover/de'
import { english } from '../../../engine/words/handover/en'
import { CHAPTERS } from '../../../engine/words/handover/language'
import { HANDOVER_LANGUAGES, handoverWords } from '../../../engine/words/handover/languages'
import { handoverBook } from '../../../engine/words/handover/make'
import { design, partNamed } from '../../build'
import { Random } from '../../reference/random'
import { DEMOS } from '../../scenarios/demos/all'
import { randomDesign } from '../rules/randomdesign'

const textsOf = (value: unknown): string[] => {
  if (typeof value === 'string') return [value]
  if (Array.isArray(value)) return value.flatMap(textsOf)
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsOf) : []
}

const read = (book: Book): string =>
  [...textsOf(book.cover), ...book.chapters.flatMap((c) => [c.title, ...textsOf(c.pieces)])].join('\n')

const van = () => DEMOS[0]!.make()
const inGerman = (d: Design): Design => ({ ...d, handover: { ...d.handover, language: 'de' } })

/** Every phrase of a language by its path; functions are asked with marks for their words. */
function phrases(words: object, path = ''): Map<string, string> {
  const found = new Map<string, string>()
  for (const [key, value] of Object.entries(words)) {
    const at = `${path}/${key}`
    if (typeof value === 'string') found.set(at, value)
    else if (typeof value === 'function') found.set(at, String(value('‹1›', '‹2›', '‹3›')))
    else if (typeof value === 'object' && value !== null)
      for (const [k, v] of phrases(value, at)) found.set(k, v)
  }
  return found
}

describe('languages', () => {
  const [en, de] = [phrases(english), phrases(german)]

  test('both say the same things: the same keys, none of them empty but the leads', () => {
    expect([...de.keys()].sort()).toEqual([...en.keys()].sort())
    for (const [key, text] of de)
      if (!key.endsWith('/lead')) expect([key, text.trim()]).not.toEqual([key, ''])
  })

  test('no phrase of the second is left in English', () => {
    // Words that are alike in both languages, and names of figures alone.
    const alike = new Set(['Motor', 'orange', 'Display'])
    const same = [...de].filter(
      ([key, text]) => text === en.get(key) && !alike.has(text) && /\p{L}{3}/u.test(text),
    )
    expect(same.map(([key]) => key)).toEqual([])
    const common = / (the|and|of|is|are|with|for|not|your|when|which) /
    for (const [key, text] of de) expect([key, common.test(` ${text} `)]).toEqual([key, false])
  })

  test('a phrase passes on every name and figure that it is given, in every language', () => {
    for (const [key, text] of en) {
      const marks = (t: string): string[] => [...new Set(t.match(/‹\d›/g) ?? [])].sort()
      expect([key, marks(de.get(key)!)]).toEqual([key, marks(text)])
    }
  })

  test('kinds and colours have a word in each', () => {
    const colours = Object.keys(RATINGS).flatMap((form) =>
      RATINGS[form as keyof typeof RATINGS].amps.flatMap(
        (a) => fuseColour(form as keyof typeof RATINGS, a) ?? [],
      ),
    )
    for (const words of Object.values(HANDOVER_LANGUAGES)) {
      expect(KINDS.filter((k) => words.kinds[k.key] === undefined).map((k) => k.key)).toEqual([])
      expect(colours.filter((c) => words.colours[c] === undefined)).toEqual([])
    }
  })

  test('a language that this version does not have reads in English', () => {
    expect(handoverWords('xx')).toBe(english)
    expect(handoverWords('toString')).toBe(english)
  })

  test('figures and dates are written in the manner of the language', () => {
    expect(read(handoverBook(van()))).toContain('4 March 2026')
    const book = read(handoverBook(inGerman(van())))
    expect(book).toContain('4. März 2026')
    expect(book).toContain('7,5 A')
    expect(book).not.toMatch(/\d\.\d A/)
  })
})

describe('the book', () => {
  test.each(DEMOS.map((d) => [d.title, d.make()] as const))('%s: judges nothing', (_, d) => {
    for (const language of Object.keys(HANDOVER_LANGUAGES)) {
      const text = read(handoverBook({ ...d, handover: { language } }))
      expect(text).not.toMatch(
        /\b(safe|safely|safety|compliant|compliance|sicher|konform|vorschriftsmäßig)\b/i,
      )
      expect(text).not.toMatch(/undefined|NaN|Infinity|\[object/)
    }
  })

  test('follows the design: name, place, rating, a thing more, a thing less', () => {
    const d = van()
    const m1 = partNamed(d, 'M1')
    const with1 = (values: object) => ({
      ...d,
      parts: d.parts.map((p) => (p.id === m1.id ? { ...p, ...values } : p)),
    })
    const before = read(handoverBook(d))
    expect(before).toContain('Water pump (M1)')
    const renamed = read(handoverBook(with1({ name: 'Shower pump', location: 'wet room' })))
    expect(renamed).not.toContain('Water pump (M1)')
    expect(renamed).toContain('Shower pump (M1)')
    expect(renamed).toContain('Wet room')
    const f5 = partNamed(d, 'F5')
    const ways = (f5.values.ways as { ratingA: number }[]).map((w, i) =>
      i === 3 ? { ...w, ratingA: 20 } : w,
    )
    const refused = handoverBook({
      ...d,
      parts: d.parts.map((p) => (p.id === f5.id ? { ...p, values: { ...p.values, ways } } : p)),
    })
    expect(findOf(refused, 'Water pump (M1)')?.fuses[0]).toMatchObject({ rating: '20 A', colour: 'yellow' })
    expect(findOf(handoverBook(d), 'Water pump (M1)')?.fuses[0]).toMatchObject({
      rating: '15 A',
      colour: 'blue',
      place: 'power wall',
    })
    const gone = {
      ...d,
      parts: d.parts.filter((p) => p.id !== m1.id),
      conductors: d.conductors.filter((c) => c.from.part !== m1.id && c.to.part !== m1.id),
    }
    expect(read(handoverBook(gone))).not.toContain('(M1)')
  })

  test('leaves hidden chapters out and numbers the others anew', () => {
    const book = handoverBook({ ...van(), handover: { hidden: ['emergency', 'care'] } })
    expect(book.chapters.map((c) => c.key)).toEqual(CHAPTERS.filter((k) => k !== 'emergency' && k !== 'care'))
    expect(book.chapters[0]!.number).toBe(1)
    expect(book.cover.find.rows).toHaveLength(CHAPTERS.length - 2)
  })

  test('puts own paragraphs where they belong; a hidden chapter hands its own to the one before', () => {
    const paragraphs = [
      { id: 'h1', heading: 'Last', text: 'z', after: 'contacts' },
      { id: 'h2', heading: 'Greeting', text: 'Dear all\n\nwelcome', after: null },
      { id: 'h3', heading: 'After care', text: 'c', after: 'care' },
      { id: 'h4', heading: 'Nowhere', text: 'n', after: 'from tomorrow' },
    ]
    const keys = (hidden: string[]) =>
      handoverBook({ ...van(), handover: { paragraphs, hidden } }).chapters.map((c) => c.key)
    expect(keys([])[0]).toBe('own:h2')
    expect(keys([]).slice(-2)).toEqual(['own:h1', 'own:h4'])
    expect(keys([])[keys([]).indexOf('care') + 1]).toBe('own:h3')
    expect(keys(['care'])[keys(['care']).indexOf('storage') + 1]).toBe('own:h3')
    const [greeting] = handoverBook({ ...van(), handover: { paragraphs } }).chapters
    expect(greeting?.pieces.map((p) => p.is === 'text' && p.text)).toEqual(['Dear all', 'welcome'])
  })

  test('tells what works by itself apart from what a hand works', () => {
    const d = design()
      .part('battery', 'G1', { capacityAh: 100 })
      .part('low-voltage-cut-out', 'Q1', {}, { name: 'Cut-out' })
      .part('lamp', 'E1', { currentA: 1 }, { name: 'Reading lamp' })
      .join('G1.+', 'Q1.1')
      .join('Q1.2', 'E1.+')
      .join('E1.-', 'G1.-')
      .join('G1.-', 'Q1.31')
      .build()
    const { pieces } = handoverBook(d).chapters.find((c) => c.key === 'switches')!
    const at = pieces.findIndex((p) => p.is === 'heading' && p.text === 'Work by themselves')
    expect(pieces[at + 1]).toMatchObject({
      title: 'Cut-out (Q1)',
      lines: ['When it opens, these stop: Reading lamp.'],
    })
  })
})

const findOf = (book: Book, title: string) =>
  book.chapters
    .flatMap((c) => c.pieces)
    .find((p): p is Extract<Piece, { readonly is: 'find' }> => p.is === 'find' && p.title === title)

test('any design makes a book in any language, whole sentences and no holes', () => {
  const random = new Random(7)
  for (let i = 0; i < 60; i++) {
    const made = randomDesign(random, 4 + i, i % 2 === 0 ? 'sensible' : 'wild')
    for (const language of Object.keys(HANDOVER_LANGUAGES)) {
      const text = read(handoverBook({ ...made, handover: { language } }))
      expect(text).not.toMatch(/undefined|NaN|Infinity|\[object/)
    }
  }
  expect(read(handoverBook(design().build()))).toContain('No switch of this system')
})
