import type { Design } from '../../../engine/model/design'
import type { Values } from '../../../engine/model/fields'
import { analyse } from '../../../engine/rules/analyse'
import type { Finding } from '../../../engine/rules/finding'
import { sentence } from '../../../engine/words/findings'
import { type DesignBuilder, design, type JoinWords } from '../../build'

/** Values and words over those of the bench, by designation and conductor number. */
export interface BenchChange {
  readonly parts?: Readonly<Record<string, Values>>
  readonly runs?: Readonly<Record<string, JoinWords>>
}

/**
 * One battery, a main fuse, a block of two ways, a lamp and a pump, all returns straight to the battery. As it is, no
 * rule of faults or ratings says anything of it.
 */
export function bench({ parts = {}, runs = {} }: BenchChange = {}): DesignBuilder {
  const run = (number: string, size: string, lengthM: number, words: JoinWords = {}): JoinWords => ({
    number,
    size,
    lengthM,
    ...words,
    ...runs[number],
  })
  return design({ systemV: 12, ruleSet: 'metric-automotive', ambientC: 30, coldestC: -5 })
    .part('battery', 'G1', {
      capacityAh: 100,
      dischargeA: 100,
      chargeA: 50,
      internalMOhm: 4,
      ...parts.G1,
    })
    .part('fuse-bolt-in', 'F1', { ratingA: 80, class: 'sf51', breakingKA: 5, breakingV: 32, ...parts.F1 })
    .part('fuse-block', 'F2', {
      ways: [
        { ratingA: 10, label: 'Lamp' },
        { ratingA: 15, label: 'Pump' },
        { ratingA: null, label: 'Spare' },
      ],
      breakingKA: 5,
      ratingA: 100,
      ...parts.F2,
    })
    .part('lamp', 'E1', { currentA: 6, ...parts.E1 })
    .part('pump', 'M1', { currentA: 8, inrush: 1, ...parts.M1 })
    .join('G1.+', 'F1.1', run('W1', '35mm2', 0.15))
    .join('F1.2', 'F2.in', run('W2', '35mm2', 1))
    .join('F2.1', 'E1.+', run('W3', '2.5mm2', 3))
    .join('E1.-', 'G1.-', run('W4', '2.5mm2', 4, { returnOf: 'W3' }))
    .join('F2.2', 'M1.+', run('W5', '2.5mm2', 3))
    .join('M1.-', 'G1.-', run('W6', '2.5mm2', 4, { returnOf: 'W5' }))
}

/** Findings of some rules as "rule level names"; every one of them is put into words as well. */
export function told(of: Design | DesignBuilder, ...rules: string[]): string[] {
  const whole = 'build' in of ? of.build() : of
  return findings(whole, ...rules).map((f) => {
    const text = sentence(f, whole)
    if ([text.title, text.text, text.todo].some((t) => t === '' || /undefined|NaN|\bnull\b/.test(t)))
      throw new Error(`${f.rule} has no words: ${JSON.stringify(text)}`)
    const names = [
      ...f.conductors.map((id) => whole.conductors.find((c) => c.id === id)!.number),
      ...f.parts.map((id) => whole.parts.find((p) => p.id === id)!.designation),
    ]
    return [f.rule, f.level, ...names].join(' ')
  })
}

export const findings = (of: Design, ...rules: string[]): Finding[] =>
  analyse(of).findings.filter((f) => rules.includes(f.rule))
