import { describe, expect, test } from 'vitest'
import { rootFactor } from '../../../engine/tables/ambient'
import { type AmpacitySpec, ampacityOf } from '../../../engine/tables/ampacity'
import { CFR_TABLE_5, ISO_6722_3 } from '../../../engine/tables/ampacitytables'
import { ruleSetByKey } from '../../../engine/tables/rulesets'
import { sizeByKey } from '../../../engine/tables/sizes'

const cfr = ruleSetByKey('us-33cfr183')!
const metric = ruleSetByKey('metric-automotive')!
const caravan = ruleSetByKey('caravan-au-nz')!

const plain: AmpacitySpec = { size: null, insulationC: null, engineSpace: false, bunched: 1 }

const amps = (set: typeof cfr, spec: Partial<AmpacitySpec>, ambientC = 30): number => {
  const answer = ampacityOf(set, { ...plain, ...spec }, ambientC)
  if ('notChecked' in answer) throw new Error(answer.notChecked)
  return answer.value.amps
}

const reason = (set: typeof cfr, spec: Partial<AmpacitySpec>, ambientC = 30): string => {
  const answer = ampacityOf(set, { ...plain, ...spec }, ambientC)
  return 'notChecked' in answer ? answer.notChecked : `${answer.value.amps} A`
}

describe('US 33 CFR 183.425 Table 5', () => {
  // Ratings as printed in the law, and in a seller's list of heat ratings for engine spaces (51, 102 and 378 A).
  test.each([
    ['10awg', 60, 51],
    ['6awg', 120, 102],
    ['4/0awg', 445, 378],
  ])('%s with 105 °C insulation: %d A, and in an engine space %d A', (size, outside, inside) => {
    expect(amps(cfr, { size })).toBe(outside)
    expect(Math.abs(amps(cfr, { size, engineSpace: true }) - inside)).toBeLessThan(1)
  })

  // 33 CFR 183.455(c)(1): a device of up to 150 % below 50 V: 90 A for 10 AWG, 105 °C.
  test('a device of 90 A may protect 10 AWG', () => {
    expect(amps(cfr, { size: '10awg' }) * cfr.deviceShare.value).toBe(90)
  })

  // As printed in the law: corners of the table.
  test.each([
    ['18awg', 60, 10],
    ['18awg', 200, 25],
    ['4/0awg', 60, 300],
    ['4/0awg', 200, 510],
    ['2awg', 75, 170],
  ])('%s at %d °C: %d A', (size, insulationC, wanted) => {
    expect(amps(cfr, { size, insulationC })).toBe(wanted)
  })

  test('grows with copper and with insulation throughout', () => {
    for (const [i, [, row]] of CFR_TABLE_5.rows.entries()) {
      for (let j = 1; j < row.length; j++) expect(row[j]!).toBeGreaterThanOrEqual(row[j - 1]!)
      const thinner = CFR_TABLE_5.rows[i - 1]?.[1]
      if (thinner) for (const [j, a] of row.entries()) expect(a).toBeGreaterThanOrEqual(thinner[j]!)
    }
  })

  // The engine-space factors of the law are √((T − 50)/(T − 30)) within 0.01, but for 200 °C.
  test.each([60, 75, 80, 90, 105, 125])(
    'the factor for %d °C insulation follows the square-root law',
    (insulationC) => {
      const factor =
        amps(cfr, { size: '2awg', insulationC, engineSpace: true }) / amps(cfr, { size: '2awg', insulationC })
      expect(Math.abs(factor - rootFactor(50, insulationC, 30)!)).toBeLessThan(0.01)
    },
  )

  test('only the confirmed factor leaves the figure confirmed', () => {
    const at = (insulationC: number) =>
      ampacityOf(cfr, { ...plain, size: '2awg', insulationC, engineSpace: true }, 30)
    expect(at(105)).toMatchObject({ value: { confirmed: true } })
    expect(at(90)).toMatchObject({ value: { confirmed: false } })
  })

  test('a place warmer than the table knows lowers it further, never raises it', () => {
    expect(amps(cfr, { size: '10awg' }, 40)).toBeCloseTo(60 * Math.sqrt(65 / 75), 9)
    expect(amps(cfr, { size: '10awg', engineSpace: true }, 40)).toBe(51)
    expect(amps(cfr, { size: '10awg', engineSpace: true }, 70)).toBeCloseTo(60 * Math.sqrt(35 / 75), 9)
    expect(amps(cfr, { size: '10awg' }, 10)).toBe(60)
    expect(reason(cfr, { size: '10awg', insulationC: 60 }, 60)).toContain('no factor')
  })

  // ABYC E-11, restated in a marine catalogue: 3 conductors 0.70, 4 to 6 0.60, 7 to 24 0.50, 25 and more 0.40.
  test.each([
    [1, 1],
    [2, 1],
    [3, 0.7],
    [4, 0.6],
    [6, 0.6],
    [7, 0.5],
    [24, 0.5],
    [25, 0.4],
    [60, 0.4],
  ])('%d in a bundle: × %d', (bunched, factor) => {
    expect(amps(cfr, { size: '10awg', bunched })).toBeCloseTo(60 * factor, 9)
  })

  test('a metric size takes the row that is no thicker than its copper', () => {
    for (const [key, row] of [
      ['16mm2', '6awg'],
      ['35mm2', '2awg'],
      ['50mm2', '1awg'],
      ['150mm2', '4/0awg'],
    ] as const)
      expect(ampacityOf(cfr, { ...plain, size: key }, 30)).toMatchObject({ value: { row } })
  })

  test('insulation between two columns takes the cooler one', () => {
    expect(amps(cfr, { size: '10awg', insulationC: 85 })).toBe(50)
    expect(reason(cfr, { size: '10awg', insulationC: 55 })).toContain('no column')
  })
})

describe('DIN ISO 6722-3', () => {
  // Guide currents at 50 °C as printed beside those at 30 °C: reached through the printed ambient factor 0.71.
  test.each([
    ['1mm2', 13.5],
    ['1.5mm2', 17],
    ['2.5mm2', 22.7],
    ['4mm2', 29.8],
    ['6mm2', 38.3],
    ['10mm2', 51.8],
    ['16mm2', 69.6],
    ['25mm2', 91.6],
    ['35mm2', 112],
    ['50mm2', 140],
    ['70mm2', 174],
    ['95mm2', 207],
    ['120mm2', 244],
  ])('%s at 50 °C: %d A', (size, wanted) => {
    expect(Math.abs(amps(metric, { size }, 50) - wanted) / wanted).toBeLessThan(0.006)
  })

  // 25 mm²: 129 A at 30 °C; √(20/40) = 0.7071 gives 91.2 A against 91.6 A as printed.
  test('the square-root law agrees with the printed 50 °C column', () => {
    expect(Math.abs(129 * rootFactor(50, 70, 30)! - 91.6) / 91.6).toBeLessThan(0.01)
  })

  // IEC 60364-5-52 through a printed table of a compressor manual, 120 mm² PVC: 206 A at 30 °C, then 179, 163, 146, 126.
  test.each([
    [40, 179],
    [45, 163],
    [50, 146],
    [55, 126],
  ])('the ambient factor at %d °C turns 206 A into %d A', (ambientC, wanted) => {
    expect(Math.abs(206 * metric.ambientFactor(ambientC, 70, false)!.value - wanted)).toBeLessThan(1)
    expect(metric.ambientFactor(ambientC, 70, false)!.confirmed).toBe(true)
  })

  test('between two steps the warmer one counts, beyond the last there is no figure', () => {
    expect(amps(metric, { size: '25mm2' }, 46)).toBe(amps(metric, { size: '25mm2' }, 50))
    expect(reason(metric, { size: '25mm2' }, 61)).toContain('no factor')
    expect(amps(metric, { size: '25mm2', engineSpace: true }, 20)).toBeCloseTo(91.59, 9)
  })

  // IEC 60364-5-52 table of bunched circuits: two 0.80, three 0.70, six 0.57, twenty 0.38.
  test.each([
    [2, 1],
    [3, 0.8],
    [4, 0.8],
    [6, 0.7],
    [12, 0.57],
    [20, 0.45],
    [40, 0.38],
  ])('%d conductors bunched: × %d', (bunched, factor) => {
    expect(amps(metric, { size: '10mm2', bunched })).toBeCloseTo(73 * factor, 9)
  })

  test('gaps give a reason', () => {
    expect(reason(metric, {})).toBe('no size is chosen')
    expect(reason(metric, { size: '0.75mm2' })).toContain('no row as thin')
    expect(reason(metric, { size: '9mm2' })).toContain('not in the catalogue')
    expect(reason(metric, { size: '10mm2', bunched: 41 })).toContain('bunched')
    expect(reason(metric, { size: '10mm2', insulationC: 60 })).toContain('no column')
  })

  test('auto cable takes its current from its copper, not from its name', () => {
    expect(ampacityOf(caravan, { ...plain, size: '6auto' }, 30)).toMatchObject({
      value: { row: '4mm2', amps: 42 },
    })
    expect(ampacityOf(caravan, { ...plain, size: '3auto' }, 30)).toMatchObject({
      value: { row: '1mm2', confirmed: false },
    })
  })
})

test('the rows of a table stand thinnest first, as the search for a row needs', () => {
  for (const table of [CFR_TABLE_5, ISO_6722_3])
    for (let i = 1; i < table.rows.length; i++)
      expect(sizeByKey(table.rows[i]![0])!.sectionMm2).toBeGreaterThan(
        sizeByKey(table.rows[i - 1]![0])!.sectionMm2,
      )
})

// IEC 60364-5-52, as restated: 70 °C PVC of 25 mm² carries 101 A in a conduit and 126 A in free air.
describe('what lies round a conductor', () => {
  const at = (spec: Partial<AmpacitySpec>) =>
    amps(metric, { size: '25mm2', ...spec }) / amps(metric, { size: '25mm2' })

  test('the factor of a conduit is what the two methods of laying differ by, rounded down', () => {
    expect(at({ surround: 'conduit' })).toBeCloseTo(0.8, 9)
    expect(0.8).toBeLessThanOrEqual(101 / 126)
  })

  test('sheathed throughout counts as in a conduit, unless something else is stated', () => {
    expect(at({ sheathed: true })).toBeCloseTo(0.8, 9)
    expect(at({ sheathed: false })).toBe(1)
    expect(at({ sheathed: true, surround: 'free' })).toBe(1)
    expect(at({ sheathed: true, surround: 'insulation' })).toBeCloseTo(0.5, 9)
  })
})
