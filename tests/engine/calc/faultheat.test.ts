import { expect, test } from 'vitest'
import type { EndFault } from '../../../engine/calc/faultanswers'
import { worstHeat } from '../../../engine/calc/faultheat'
import { fuseBand } from '../../../engine/tables/fuseband'

const NO_END: EndFault = { greatest: { value: 0 }, least: { value: 0 }, clearing: [] }
const band = fuseBand('e', 100, { holds: null, clears: null })

/** A far end at which the device, 100 A of form E, sees all of the fault. */
const end = (least: number, greatest: number): EndFault => ({
  greatest: { value: greatest },
  least: { value: least },
  clearing: [{ part: 'p1', key: 'link', amps: least, runAmps: least, within: { value: null } }],
})
const heat = (least: number, greatest: number) =>
  worstHeat({ from: NO_END, to: end(least, greatest) }, () => band)

// DIN 72581-3 form E, published window: 3.5 In within 7 s; beyond it the I²t of that point. It reaches 5 s at 414 A.
test('beyond the last gate heat is that of the gate, at any current', () => {
  expect(heat(500, 5000)?.a2s).toBeCloseTo(7 * 350 ** 2, 3)
  expect(heat(500, 500)?.seconds).toBeCloseTo(7 * (350 / 500) ** 2, 9)
})

test('what may last longer than 5 s is left to the rule on slow clearing', () => {
  expect(heat(300, 400)).toBeUndefined()
  expect(heat(300, 5000)?.amps).toBeCloseTo(5000, 6)
})

test('between two gates the worst current is the one just below the next', () => {
  const two = fuseBand('other', 100, { holds: null, clears: { times: 2, seconds: 4 } })!
  const gates = [...two.gates, { amps: 1000, least: 0, most: 0.1 }]
  const found = worstHeat({ from: NO_END, to: end(250, 4000) }, () => ({ ...two, gates }))
  expect(found?.amps).toBeCloseTo(1000, 3)
  expect(found?.a2s).toBeCloseTo(4 * 1000 ** 2, -1)
})

test('a parallel way takes its part: the device sees less than the conductor', () => {
  const shared: EndFault = {
    ...end(1000, 1000),
    clearing: [{ part: 'p1', key: 'link', amps: 500, runAmps: 1000, within: { value: null } }],
  }
  const found = worstHeat({ from: NO_END, to: shared }, () => band)
  expect(found?.a2s).toBeCloseTo(7 * 350 ** 2 * 4, 3)
})
