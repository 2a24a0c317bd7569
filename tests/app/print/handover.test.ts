import { describe, expect, test } from 'vitest'
import { designPdf } from '../../../app/print/designpdf'
import { planOf } from '../../../engine/calc/operating/plan'
import { kindOf } from '../../../engine/kinds/all'
import type { Design, Part } from '../../../engine/model/design'
import { handoverCover, handoverSheets } from '../../../engine/sheets/handover/sheets'
import { readFonts } from '../../reference/typeface/read'
import { DEMOS } from '../../scenarios/demos/all'
import { textsOf } from './pdftext'

const pdfOf = (d: Design): Uint8Array =>
  designPdf(d, [...handoverCover(d), ...handoverSheets(d)], {
    title: 'Handover',
    fonts: readFonts(),
    colouring: 'colour',
  })

/** The number on the tab at the edge of a page stands at the end of some line. */
const withoutTab = (page: string): string => page.replaceAll(/ {3,}\d+$/gm, '')

/** Pages of one chapter, their lines run together: what the pack says, as another program reads it. */
async function chapters(pdf: Uint8Array): Promise<ReadonlyMap<number, string>> {
  const found = new Map<number, string>()
  let current = 0
  for (const page of await textsOf(pdf)) {
    const begins = /^ *(\d+)\. [A-Z]/m.exec(page)
    if (begins) current = Number(begins[1])
    found.set(current, `${found.get(current) ?? ''} ${withoutTab(page).replaceAll(/\s+/g, ' ')}`)
  }
  return found
}

const nameOf = ({ name, kind, designation }: Part): string =>
  name === '' ? `${kindOf(kind)?.title} ${designation}` : `${name} (${designation})`

describe.each(DEMOS.map((d) => [d.title, d.make()] as const))('%s', (_, d) => {
  test('every load is in the fuse finder, with the rating of its way where it has one', async () => {
    const finder = (await chapters(pdfOf(d))).get(2) ?? ''
    const loads = new Set(planOf(d).devices.flatMap(({ is, part }) => (is === 'load' ? [part] : [])))
    expect(loads.size).toBeGreaterThan(5)
    for (const part of d.parts.filter((p) => loads.has(p.id) && p.kind !== 'spare-way'))
      expect(finder).toContain(nameOf(part))
  })

  test('every switch, isolator and breaker is told, and what it does', async () => {
    const switches = (await chapters(pdfOf(d))).get(3) ?? ''
    const hands = d.parts.filter((p) => ['panel-switch', 'isolator', 'breaker'].includes(p.kind))
    for (const part of hands) expect(switches).toContain(nameOf(part))
  })

  test('every part stands in its place', async () => {
    const places = (await chapters(pdfOf(d))).get(5) ?? ''
    for (const part of d.parts.filter((p) => p.kind !== 'spare-way')) expect(places).toContain(nameOf(part))
  })
})

test('the van: a dead water pump leads to its fuse, and its block on to the fuse ahead, each in order', async () => {
  const finder = (await chapters(pdfOf(DEMOS[0]!.make()))).get(2)!
  const holds = (title: string, ...order: readonly string[]): void => {
    const entry = finder.slice(finder.indexOf(title))
    const at = order.map((text) => entry.indexOf(text))
    expect(at.every((i) => i > 0)).toBe(true)
    expect([...at].sort((a, b) => a - b)).toEqual(at)
  }
  holds('Water pump (M1)', 'Water pump switch (S2', '15 A', 'Loads block (F5), way 4', 'blue')
  holds(
    'Several on Loads block (F5)',
    'Loads master switch (S1',
    'Main distribution (F3), way 2',
    'Always-on block (F6), way 5',
    'Water pump',
  )
})

test('installer and telephone stand at the foot of every page', async () => {
  const pages = await textsOf(pdfOf(DEMOS[2]!.make()))
  expect(pages.length).toBeGreaterThan(9)
  for (const page of pages.slice(1)) expect(page).toContain('555-0142')
})
