import { apply } from '../../../engine/edit/apply'
import { analyse, type Design, type Finding } from '../../../engine/index'
import type { Settings } from '../../../engine/model/design'
import { type DesignBuilder, design } from '../../build'

/**
 * A small sound system to plant one mistake in: battery G1, 80 A fuse F1, block F2 of three ways, both shunts (B1
 * battery, B2 loads), source bar W1, load return bar W2, loads E1 (10 A) and E2 (5 A), charger T1 (20 A).
 * Ampacities, DIN ISO 6722-3 at 30 °C: 1.5 mm² 24 A, 2.5 mm² 32 A, 4 mm² 42 A, 16 mm² 98 A, 35 mm² 158 A.
 * Options leave a part of it out, for a test to draw it otherwise.
 */
export type Left = 'feed' | 'return1' | 'charger' | 'loadShunt' | 'batteryShunt'

export function system(settings: Partial<Settings> = {}, ...left: Left[]): DesignBuilder {
  const has = (what: Left): boolean => !left.includes(what)
  let d = design(settings)
    .part('battery', 'G1', {
      volts: String(settings.systemV ?? 12),
      capacityAh: 100,
      dischargeA: 100,
      chargeA: 50,
      internalMOhm: 4,
    })
    .part('fuse-cartridge', 'F1', { ratingA: 80, voltageV: 125, breakingKA: 20, breakingV: 125 })
    .part('fuse-block', 'F2', {
      ratingA: 100,
      ways: [
        { ratingA: 15, label: 'Heater' },
        { ratingA: 10, label: 'Light' },
        { ratingA: 30, label: 'Charger' },
      ],
    })
    .part('shunt', 'B1', { role: 'battery', ratingA: 300, data: 'none' })
    .part('shunt', 'B2', { role: 'load', ratingA: 150, data: 'none' })
    .part('busbar', 'W1', { studs: 6, pole: 'negative', ratingA: 150 })
    .part('busbar', 'W2', { studs: 6, pole: 'negative', ratingA: 100 })
    .part('load', 'E1', { currentA: 10 })
    .part('lamp', 'E2', { currentA: 5 })
    .part('mains-charger', 'T1', { outputA: 20, data: 'none' })
    .join('G1.+', 'F1.1', { size: '35mm2', lengthM: 0.15, number: 'main' })
  if (has('feed')) d = d.join('F1.2', 'F2.in', { size: '35mm2', lengthM: 1, number: 'feed' })
  if (has('batteryShunt'))
    d = d
      .join('G1.-', 'B1.b', { size: '35mm2', lengthM: 0.3, number: 'back1' })
      .join('B1.s', 'W1.1l', { size: '35mm2', lengthM: 0.3, number: 'back2' })
  if (has('loadShunt'))
    d = d
      .join('W1.1r', 'B2.b', { size: '35mm2', lengthM: 0.3, number: 'back3' })
      .join('B2.s', 'W2.1l', { size: '35mm2', lengthM: 0.5, number: 'back4' })
  d = d.join('F2.1', 'E1.+', { size: '2.5mm2', lengthM: 2, number: 'E1+' })
  if (has('return1'))
    d = d.join('E1.-', 'W2.2r', { size: '2.5mm2', lengthM: 2, number: 'E1-', returnOf: 'E1+' })
  d = d
    .join('F2.2', 'E2.+', { size: '2.5mm2', lengthM: 2, number: 'E2+' })
    .join('E2.-', 'W2.3r', { size: '2.5mm2', lengthM: 2, number: 'E2-' })
  if (has('charger'))
    d = d
      .join('F2.3', 'T1.+', { size: '6mm2', lengthM: 1, number: 'T1+' })
      .join('T1.-', 'W1.2r', { size: '6mm2', lengthM: 1, number: 'T1-' })
  return d
}

/** Findings of one rule. */
export const of = (rule: string, d: Design): Finding[] => analyse(d).findings.filter((f) => f.rule === rule)

/** "danger main G1": level, conductors by number, parts by designation. */
export function told(d: Design, f: Finding): string {
  const numbers = f.conductors.map((id) => d.conductors.find((c) => c.id === id)?.number ?? id)
  const names = f.parts.map((id) => d.parts.find((p) => p.id === id)?.designation ?? id)
  return [f.level, ...numbers, ...names].join(' ')
}

export const toldOf = (rule: string, d: Design): string[] => of(rule, d).map((f) => told(d, f))

/** Actual and limit, rounded to a thousandth. */
export const figures = (f: Finding | undefined): (number | string | undefined)[] =>
  [f?.actual, f?.limit].map((x) =>
    x === undefined || x.value === 'unlimited' ? x?.value : Math.round(x.value * 1000) / 1000,
  )

/** The design with the fix of a finding made; throws where there is none or it is refused. */
export function mended(d: Design, f: Finding | undefined): Design {
  if (!f?.fix) throw new Error('no fix')
  const result = apply(d, f.fix.edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}
