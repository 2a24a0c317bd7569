import { expect, test } from 'vitest'
import { GREATEST, LEAST } from '../../../engine/calc/faultsystem'
import { kindOf } from '../../../engine/kinds/all'
import type { Values } from '../../../engine/model/fields'
import { complete } from '../../../engine/model/values'

const CONTEXT = { systemV: 12, lowestV: 10, highestV: 14.6 }

const model = (key: string, values: Values, context = CONTEXT) => {
  const kind = kindOf(key)!
  return kind.electrical(complete(kind.fields, values), context)
}
const device = (key: string, values: Values, at = 0) => model(key, values).devices[at]!

// homepower.com, "PV Circuit Sizing": 8.8 A short-circuit current counts as 11 A.
test('a PV array gives 1.25 of its short-circuit current, in service and into a fault', () => {
  const array = device('pv-array', { iscA: 8.8 })
  expect(array.maxA).toBeCloseTo(11, 9)
  expect(array.sustainedFaultA).toBeCloseTo(11, 9)
  // Strings side by side add up; modules in series do not.
  expect(device('pv-array', { iscA: 8.8, series: 3, parallel: 2 }).maxA).toBeCloseTo(22, 9)
})

// NEC 690.7 and IEC 62548: series adds voltage. Rated power is the product at most power.
test('figures of a PV array', () => {
  const kind = kindOf('pv-array')!
  const v = complete(kind.fields, { vocV: 22, iscA: 6, vmpV: 18, impA: 5.5, series: 2, parallel: 2 })
  expect(kind.results!(v, CONTEXT)).toEqual({ arrayIscA: 12, arrayMaxA: 15, arrayVocV: 44, arrayW: 396 })
})

test('the caption of a PV array gives the figures of the array, and those of a module beside them', () => {
  const kind = kindOf('pv-array')!
  const module = { moduleW: 190, vocV: 24.3, iscA: 9.8, vmpV: 20, impA: 9.5 }
  const caption = (more: Values) => kind.caption(complete(kind.fields, { ...module, ...more }))
  expect(caption({ series: 2, parallel: 2 })).toEqual([
    '2s × 2p, 760 W',
    'array Voc 48.6 V, Isc 19.6 A (module 24.3 V, 9.8 A)',
  ])
  expect(caption({})).toEqual(['1s × 1p, 190 W', 'Voc 24.3 V, Isc 9.8 A'])
  expect(caption({ series: 2, vocV: null })).toEqual(['2s × 1p, 380 W'])
})

// Resistances printed in a public guide to shunts: 100 A, 75 mV is 0.75 mΩ; 50 A, 75 mV is 1.5 mΩ.
test.each([
  [100, 75, 0.00075],
  [50, 75, 0.0015],
])('a shunt of %i A and %i mV', (ratingA, millivolts, ohms) => {
  expect(model('shunt', { ratingA, millivolts }).branches[0]!.ohms).toBeCloseTo(ohms, 12)
})

// I = P / (η · V), an identity; the cut-off voltages are 1.75 V a lead-acid cell, as a public test guide prints.
test.each([
  [2000, 10.5, 211.64],
  [3000, 42, 79.365],
])('an inverter of %i W at %d V', (powerW, lowestV, amps) => {
  const { minA, maxA } = device('inverter', { powerW, lowestV, efficiency: 90 })
  expect(minA).toBeCloseTo(-amps, 2)
  expect(maxA).toBe(0)
})

test('an inverter without a cut-off of its own draws most at the lowest system voltage', () => {
  expect(device('inverter', { powerW: 1000, efficiency: 80 }).minA).toBeCloseTo(-125, 9)
})

test('an inverter-charger draws and charges through one pair of conductors', () => {
  const d = device('inverter-charger', { powerW: 1800, efficiency: 90, lowestV: 10, chargeA: 70 })
  expect([d.minA, d.maxA, d.sustainedFaultA, d.role]).toEqual([-200, 70, 70, 'two-way'])
})

// Terminal numbers of DIN 72552, as restated in public for automotive relays.
test('relays carry the terminal numbers of the standard', () => {
  const marks = (key: string) =>
    kindOf(key)!
      .terminals(complete(kindOf(key)!.fields, {}))
      .map((t) => t.mark)
      .sort()
  expect(marks('relay')).toEqual(['30', '85', '86', '87'])
  expect(marks('relay-changeover')).toEqual(['30', '85', '86', '87', '87a'])
})

test('a changeover relay has one throw with two positions', () => {
  const throws = model('relay-changeover', {}).branches.map((b) => b.changeover)
  expect(throws).toEqual([
    { name: '30', position: '87' },
    { name: '30', position: '87a' },
  ])
})

test('a battery without stated limits has none; stated ones hold in both directions', () => {
  expect(device('battery', {})).toMatchObject({ minA: 'unlimited', maxA: 'unlimited' })
  const limited = device('battery', { dischargeA: 100, chargeA: 50 })
  expect(limited).toMatchObject({ minA: -50, maxA: 100, sustainedFaultA: 'unlimited' })
})

// 12 V, about 190 Ah: 3 800 A into a short circuit (a data sheet quoted in public).
test('a stated short-circuit current gives the internal resistance', () => {
  const { emfV, internalOhms } = device('battery', { chemistry: 'agm', shortCircuitKA: 3.8 })
  expect(emfV! / internalOhms!).toBeCloseTo(3800, 6)
})

// 12.8 V is printed as the nominal voltage on data sheets of four-cell LiFePO4 packs; 13.4 V full and at rest is common
// practice, no source. Its multiples follow.
test.each([
  ['12', 13.4, 1280],
  ['24', 26.8, 2560],
  ['48', 53.6, 5120],
])('a full LiFePO4 battery of %s V rests at %d V and holds %d Wh in 100 Ah', (volts, restV, energyWh) => {
  const kind = kindOf('battery')!
  const results = kind.results!(complete(kind.fields, { volts, capacityAh: 100 }), CONTEXT)
  expect(results.restV).toBeCloseTo(restV, 9)
  expect(results.energyWh).toBeCloseTo(energyWh, 9)
  // What Try it starts from, where the battery is full, is the same figure.
  expect(device('battery', { volts }).restCurve!.at(-1)![1]).toBeCloseTo(restV, 9)
})

// Published data sheets of LiFePO4 packs: charged with 14.6 V, cut off at 10 V. Other chemistries are taken alike.
test.each(['lfp', 'agm', 'gel', 'flooded'])(
  'a 12 V battery, %s, has 14.6 V and 10 V in the two fault cases',
  (chemistry) => {
    const { emfV } = device('battery', { chemistry })
    expect(emfV! * GREATEST.emfFactor).toBeCloseTo(14.6, 9)
    expect(emfV! * LEAST.emfFactor).toBeCloseTo(10, 9)
  },
)

test('a load that states neither current nor power is not known', () => {
  expect(device('lamp', {}).minA).toBeNull()
  expect(device('lamp', { currentA: 0 }).minA).toBe(0)
})

// Ohm's law and P = U · I over the voltages of the system.
test.each([
  ['current', 5],
  ['power', 6],
  ['resistance', 5 * (14.6 / 12)],
])('60 W at 12 V that behave as constant %s', (nature, amps) => {
  expect(device('load', { powerW: 60, nature }).minA).toBeCloseTo(-amps, 9)
})

test('a load of another voltage than the system draws by its own', () => {
  const context = { systemV: 24, lowestV: 20, highestV: 29.2 }
  expect(model('load', { powerW: 60, ratedV: 12 }, context).devices[0]!.minA).toBe(-5)
  expect(model('load', { powerW: 60 }, context).devices[0]!.minA).toBe(-2.5)
})

// P = U · I, R = U² / P.
test.each([
  ['current', undefined],
  ['power', { watts: 60 }],
  ['resistance', { ohms: 2.4 }],
])('what 60 W at 12 V is at an operating point: %s', (nature, atFullUse) => {
  expect(device('load', { powerW: 60, nature }).atFullUse).toEqual(atFullUse)
})

test('outputs of converters name the input that supplies them', () => {
  for (const key of ['alternator-charger', 'solar-controller', 'step-down']) {
    const [input, output] = model(key, { efficiency: 80, outputA: 10 }).devices
    expect(output!.suppliedBy).toMatchObject({ device: input!.key, efficiency: 0.8 })
  }
  expect(device('inverter', { powerW: 900, efficiency: 90 }).atFullUse).toEqual({ watts: 1000 })
})

test('a stated current counts before the power', () => {
  expect(device('load', { currentA: 4, powerW: 60 }).minA).toBe(-4)
})

// P_in = P_out / η: 40 A at 14.6 V through 90 % from 10 V.
test('an alternator charger draws for its output at its lowest input voltage', () => {
  const v = { outputA: 40, efficiency: 90, inputLowestV: 10 }
  expect(device('alternator-charger', v).minA).toBeCloseTo(-64.889, 3)
  expect(device('alternator-charger', v, 1)).toMatchObject({ minA: 0, maxA: 40, sustainedFaultA: 40 })
  expect(device('alternator-charger', { ...v, inputLimitA: 60 }).minA).toBe(-60)
})

test.each(['alternator-charger', 'step-down'])('%s: one negative for both sides unless isolated', (key) => {
  const negatives = (isolated: boolean) => model(key, { isolated }).devices.map((d) => d.negative)
  expect(negatives(false)).toEqual(['-', '-'])
  expect(negatives(true)).toEqual(['in-', 'out-'])
})

test('a solar controller joins its negatives unless isolated', () => {
  expect(model('solar-controller', { isolated: false }).merges).toEqual([['pv-', 'bat-']])
  expect(model('solar-controller', { isolated: true }).merges).toEqual([])
})

// 24 V in, 12 V out: P_in = P_out / η.
test('a step-down converter draws for its output at the lowest system voltage', () => {
  const context = { systemV: 24, lowestV: 20, highestV: 29.2 }
  const [input, output] = model('step-down', { outputA: 30, outputV: 12, efficiency: 90 }, context).devices
  expect(input!.minA).toBeCloseTo(-20, 9)
  expect(output!.maxA).toBe(30)
})

test('each way of a fuse block is a fuse of its own from the feed, named after its load', () => {
  const ways = [
    { ratingA: 10, label: 'water pump' },
    { ratingA: null, label: '' },
  ]
  const { branches, merges } = model('fuse-block', { ways, returnBar: true })
  expect(branches).toMatchObject([
    { key: '1', from: 'in', to: '1', kind: 'fuse', ratingA: 10, name: 'way 1 (water pump)' },
    { key: '2', from: 'in', to: '2', kind: 'fuse', ratingA: null, name: 'way 2' },
  ])
  expect(merges).toEqual([['return', 'r1', 'r2']])
})

test('all studs of a bar are one node', () => {
  expect(model('busbar', { studs: 2 }).merges).toEqual([['1l', '1r', '2l', '2r']])
})

test.each([
  ['battery', ['battery', 'system']],
  ['load', ['battery', 'loads']],
])('the studs of a %s shunt are marked in plain words, on the drawing as in the lists', (role, marks) => {
  const kind = kindOf('shunt')!
  const v = complete(kind.fields, { role })
  const drawn = kind.symbol(v).marks.flatMap((m) => (m.is === 'text' ? [m.text] : []))
  expect(drawn).toEqual(expect.arrayContaining(marks))
  expect(
    kind
      .terminals(v)
      .slice(0, 2)
      .map((t) => t.mark),
  ).toEqual(marks)
})

test('the return of a load passes a shunt from the far side to the battery side', () => {
  expect(model('shunt', {}).branches[0]).toMatchObject({ from: 's', to: 'b', kind: 'shunt', ratingA: 500 })
})

test('an alternator hangs on the frame through its case, if it does', () => {
  expect(model('alternator', { throughCase: true }).frame?.terminal).toBe('-')
  expect(model('alternator', { throughCase: false }).frame).toBeUndefined()
})
