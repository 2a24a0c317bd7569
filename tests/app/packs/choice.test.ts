import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { contentsOf, keepChoice, keptChoice, withContents } from '../../../app/stages/packs/choice'
import { labelChoiceFrom, optionsOf, ownFault, USUAL_LABELS } from '../../../app/stages/packs/labelchoice'
import { scaleOf, shownWidth, stepped } from '../../../app/stages/packs/zoom'
import { LABEL_STOCKS, usualContents } from '../../../engine'

describe('what is chosen is kept in the browser', () => {
  let kept: Map<string, string>
  beforeEach(() => {
    kept = new Map()
    vi.stubGlobal('localStorage', {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => kept.set(key, value),
    })
  })
  afterEach(() => vi.unstubAllGlobals())

  test('as it was chosen, for each reader', () => {
    const choice = withContents({ ...keptChoice(), reader: 'customer', paper: 'A4' }, ['fuses', 'schematic'])
    keepChoice(choice)
    expect(keptChoice()).toEqual(choice)
    expect(contentsOf(keptChoice())).toEqual(['fuses', 'schematic'])
    expect(contentsOf({ ...keptChoice(), reader: 'designer' })).toEqual(usualContents('designer'))
  })

  test('contents as usual are not kept, so that a new document finds its way into them', () => {
    const usual = withContents(withContents(keptChoice(), ['labels']), usualContents(keptChoice().reader))
    expect(usual.contents).toEqual({})
  })

  test.each(['', 'null', '[]', '{"reader":"nobody","contents":{"designer":["poem",7]},"labels":7}', '{'])(
    'what is not understood is as usual: %s',
    (text) => {
      const usual = keptChoice()
      kept.set('loomwright-packs', text)
      expect(keptChoice()).toEqual(usual)
    },
  )
})

describe('stock of labels', () => {
  test('as usual, on heat-shrink, and on a size of one’s own', () => {
    expect(optionsOf(USUAL_LABELS).stock!.warning).toBe(LABEL_STOCKS.large)
    const { sleeves, stock } = optionsOf({ ...USUAL_LABELS, conductor: 'heat-shrink', part: 'own' })
    expect(sleeves).toBe(true)
    expect(stock!.conductor).toBeUndefined()
    expect(stock!.part).toMatchObject({ w: 60, h: 30, columns: 3, rows: 9, pitchX: 62, pitchY: 30 })
  })

  test('an own size that is wider than the sheet is told, and not taken', () => {
    const own = { ...USUAL_LABELS.own, w: 80 }
    expect(ownFault(own)).toBe('3 across take 244 mm; the sheet is 210 mm wide.')
    expect(ownFault(USUAL_LABELS.own)).toBeNull()
    expect(optionsOf({ ...USUAL_LABELS, part: 'own', own }).stock!.part).toBeUndefined()
  })

  test('figures beyond all bounds are as usual', () => {
    const { own, used } = labelChoiceFrom({ used: -3, own: { w: 1e9, h: 40, columns: 'many' } })
    expect(used).toBe(0)
    expect(own).toEqual({ ...USUAL_LABELS.own, h: 40 })
  })
})

describe('zoom', () => {
  const page = { w: 420, h: 297 }
  test('whole page and page width fill the room; real size is 96 pixels to the inch', () => {
    const room = { w: 800, h: 300 }
    expect(shownWidth(page, scaleOf('width', page, room))).toBeCloseTo(800)
    expect(shownWidth(page, scaleOf('whole', page, room))).toBeCloseTo((300 * 420) / 297)
    expect(shownWidth(page, scaleOf(1, page, room))).toBeCloseTo((420 / 25.4) * 96)
  })
  test('steps end at bounds', () => {
    let scale = 1
    for (let i = 0; i < 50; i++) scale = stepped(scale, 1)
    expect(scale).toBe(6)
    for (let i = 0; i < 50; i++) scale = stepped(scale, -1)
    expect(scale).toBe(0.1)
  })
})
