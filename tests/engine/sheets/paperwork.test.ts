import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { readDesign } from '../../../engine/kinds/readdesign'
import { analyse } from '../../../engine/rules/analyse'
import { ranges } from '../../../engine/sheets/front'
import { bandPlotSheets, devicePlots, plotCaption } from '../../../engine/sheets/plotsheets'
import { runWords } from '../../../engine/sheets/runwords'
import { schematicSheets } from '../../../engine/sheets/schematic'
import type { Sheet } from '../../../engine/sheets/sheet'
import { symbolSheets } from '../../../engine/sheets/symbolsheets'
import { bench } from '../rules/bench'

const DEMOS = ['camping-trailer', 'expedition-truck', 'mountain-cabin', 'veterinary-van', 'planted-mistakes']

const demo = (name: string) => {
  const { design } = readDesign(
    readFileSync(new URL(`../../../public/demos/${name}.json`, import.meta.url), 'utf8'),
  )
  if (!design) throw new Error(`${name} is no design`)
  return { design, ...analyse(design) }
}
const words = (sheet: Sheet): string =>
  sheet.marks.flatMap((m) => (m.is === 'text' ? [m.text] : [])).join(' ')

/** ISO 3098-1: lettering heights in steps of √2, rounded: 1.8, 2.5, 3.5, 5, 7, 10 mm. */
const HEIGHTS = new Set([1.8, 2.5, 3.5, 5, 7, 10])

describe.each(DEMOS)('%s', (name) => {
  const { design, answers, findings } = demo(name)
  const sheets = schematicSheets(design, answers, findings)

  test('lettering has heights of ISO 3098 alone', () => {
    const heights = new Set(
      [...sheets, ...bandPlotSheets(design, answers)].flatMap((s) =>
        s.marks.flatMap((m) => (m.is === 'text' ? [m.height] : [])),
      ),
    )
    expect([...heights].filter((h) => !HEIGHTS.has(h))).toEqual([])
  })

  test('the front sheet lists every other sheet, and each line leads there', () => {
    const [front, ...rest] = sheets
    const said = words(front!)
    expect(rest.length).toBeGreaterThan(1)
    for (const { title } of rest) expect(said).toContain(title.replace(/^\d+ /, ''))
    expect(front!.links.map((l) => l.sheet)).toEqual(rest.map((_, i) => i + 1))
  })

  test('the revision stands in its table, and the drawing notes with their numbers', () => {
    const said = words(sheets[0]!)
    expect(said).toContain(`${design.settings.revision} ${design.settings.date} ${design.settings.designer}`)
    expect(said).toContain('Drawing notes')
  })

  test('what is said of a conductor stands on a sheet that shows it, or in the list behind', () => {
    for (const c of design.conductors) {
      const { size, length, current, protection } = runWords(design, c, answers)
      const own = sheets.filter((s) => words(s).includes(c.number)).map(words)
      // Of a pair that is drawn as one line, the return is guarded as the feed is.
      const pieces = [size, length, current, c.returnOf === null ? protection : ''].filter((w) => w !== '')
      expect(
        own.some((text) => pieces.every((piece) => text.includes(piece))),
        c.number,
      ).toBe(true)
    }
  })
})

test('designations in ranges', () =>
  expect(ranges(['E3', 'F7', 'E1', 'E2', 'M1', 'M2', 'E9'])).toBe('E1–E3, E9, F7, M1, M2'))

describe('time-current plots', () => {
  const design = bench({ parts: { M1: { currentA: 8, inrush: 3, inrushS: 0.2 } } }).build()
  const { answers } = analyse(design)

  test('one for each device with known times; every guarded conductor is named once', () => {
    const plots = devicePlots(design, answers)
    const keys = plots.map(({ plot }) => `${plot.part} ${plot.key}`)
    expect(new Set(keys).size).toBe(keys.length)
    expect(keys).toContain('p3 2')
    const guarded = plots.flatMap((p) => p.guards)
    expect(new Set(guarded).size).toBe(guarded.length)
  })

  test('says what the start does and how long the copper bears the fault', () => {
    const device = devicePlots(design, answers).find(({ plot }) => plot.part === 'p3' && plot.key === '2')!
    const said = plotCaption(design, device).join(' ')
    // ISO 8820-3, from memory: a 15 A blade fuse holds 24 A (1.6 times) for 0.25 s at least.
    expect(said).toContain('M1 starts with 24 A for 0.2 s: the device')
    // t = k²S²/I² (IEC 60364-4-43), k = 114.8 by its formula for 70 °C PVC, S = 2.5 mm².
    const borne = ((114.8 * 2.5) / device.plot.leastA!) ** 2
    const [, told] = /bears it for (\S+) s/.exec(said)!
    expect(Number(told)).toBeCloseTo(borne, borne > 1 ? 0 : 1)
  })
})

test('the symbol sheets show every kind, with its class letter, and letter in the series', () => {
  const sheets = symbolSheets()
  const text = sheets.map(words).join(' ')
  for (const title of ['Battery', 'Fuse block', 'Shunt', 'Relay, changeover contact', 'Mains inlet'])
    expect(text).toContain(title)
  const heights = sheets.flatMap((s) => s.marks.flatMap((m) => (m.is === 'text' ? [m.height] : [])))
  expect(heights.filter((h) => !HEIGHTS.has(h))).toEqual([])
})
