import { describe, expect, it } from 'vitest'
import type { Conductor, Design, Part, Settings } from '../../../engine/model/design'
import { analyse, analyser } from '../../../engine/rules/analyse'
import { SIZES } from '../../../engine/tables/sizes'
import { Random } from '../../reference/random'
import { mistakes } from '../../scenarios/demos/mistakes'
import { vetVan } from '../../scenarios/demos/vetvan'
import { randomDesign } from './randomdesign'

type Change<T> = (random: Random, was: T) => Partial<T>

/** A change of every key that a part, a conductor or the settings have, of some to what is not sensible. */
const PARTS: readonly Change<Part>[] = [
  (r) => ({ designation: `Y${r.whole(1, 99)}` }),
  (r) => ({ name: `n${r.whole(1, 99)}` }),
  (r) => ({ location: `l${r.whole(1, 99)}` }),
  (r) => ({ x: 2.5 * r.whole(0, 200), y: 2.5 * r.whole(0, 200) }),
  (r) => ({ at: { 'both-poles': { x: r.whole(1, 9), y: 5 } } }),
  (r) => ({ turn: r.pick([0, 90, 180, 270] as const), mirrored: r.chance(0.5) }),
  (r) => ({ notes: [r.whole(1, 4)] }),
  (r, { values }) => {
    const numbers = Object.keys(values).filter((k) => typeof values[k] === 'number')
    return numbers.length === 0 ? {} : { values: { ...values, [r.pick(numbers)]: r.whole(1, 40) } }
  },
  (r, { values }) => {
    const keys = Object.keys(values)
    return keys.length === 0 ? {} : { values: { ...values, [r.pick(keys)]: null } }
  },
]
const CONDUCTORS: readonly Change<Conductor>[] = [
  (r) => ({ number: `W${r.whole(100, 999)}` }),
  (r) => ({ size: r.pick(SIZES).key }),
  (r) => ({ lengthM: r.between(0.1, 9) }),
  (r) => ({ locked: r.chance(0.5) }),
  (r) => ({ colour: r.pick(['RD', 'BK', 'BU']) }),
  (r) => ({ insulationC: r.pick([60, 70, 90, null]) }),
  (r) => ({ sheathed: r.chance(0.5), engineSpace: r.chance(0.5), bunched: r.whole(1, 6) }),
  (r) => ({ surround: r.pick(['free', 'conduit', 'insulation'] as const) }),
  (r) => ({ designCurrent: r.chance(0.5) ? null : { amps: r.whole(1, 90), reason: 'measured' } }),
  (r) => ({ remark: `r${r.whole(1, 9)}` }),
  (r) => ({ path: [{ x: r.whole(1, 99), y: 5 }] }),
  (r) => ({ pathIn: { data: [{ x: r.whole(1, 99), y: 5 }] } }),
  (r, { from, to }) => (r.chance(0.5) ? { from: to, to: from } : { to: from }),
]
const SETTINGS: readonly Change<Settings>[] = [
  (r) => ({ name: `s${r.whole(1, 9)}`, customer: 'c', vehicle: 'v', designer: 'd', notes: 'one' }),
  (r) => ({ revision: `${r.whole(1, 9)}`, date: '2026-01-02', installer: 'i', contact: 'k' }),
  (r) => ({ ambientC: r.pick([20, 30, 45]) }),
  (r) => ({ coldestC: r.pick([-20, 0]) }),
  (r) => ({ systemV: r.pick([12, 24, 48] as const) }),
]

function changed(random: Random, d: Design): Design {
  const one = <T>(list: readonly T[], changes: readonly Change<T>[]): readonly T[] => {
    const at = random.whole(0, list.length - 1)
    return list.map((x, i) => (i === at ? { ...x, ...random.pick(changes)(random, x) } : x))
  }
  const what = random.unit()
  if (what < 0.4) return { ...d, parts: one(d.parts, PARTS) }
  if (what < 0.8) return { ...d, conductors: one(d.conductors, CONDUCTORS) }
  if (what < 0.9) return { ...d, settings: { ...d.settings, ...random.pick(SETTINGS)(random, d.settings) } }
  if (what < 0.95)
    return { ...d, texts: [{ id: 't1', text: 'here', view: 'all', x: random.whole(0, 9), y: 0 }] }
  return { ...d, conductors: d.conductors.filter((_, i) => i !== 0) }
}

describe('an analyser of one design after another', () => {
  it('says what an analysis from scratch says, whatever changes in between', { timeout: 60_000 }, () => {
    let reused = 0
    for (let seed = 1; seed <= 6; seed++) {
      const random = new Random(seed)
      const next = analyser()
      let d = randomDesign(random, random.whole(4, 16), 'sensible')
      let before = next(d)
      for (let i = 0; i < 14; i++) {
        // A worker sees another copy each time.
        d = structuredClone(changed(random, d))
        const now = next(d)
        const whole = analyse(d)
        expect(now.answers).toEqual(whole.answers)
        expect(now.findings).toEqual(whole.findings)
        if (now.answers === before.answers) reused += 1
        before = now
      }
    }
    expect(reused).toBeGreaterThan(15)
    expect(reused).toBeLessThan(6 * 14 - 15)
  })

  it('keeps the answers where parts are moved and renamed and conductors routed, and renews the findings', () => {
    const next = analyser()
    const van = mistakes()
    const before = next(van)
    const moved = {
      ...van,
      parts: van.parts.map((p) => ({ ...p, x: 0, y: 0, designation: `${p.designation}9` })),
      conductors: van.conductors.map((c) => ({ ...c, number: `${c.number}9`, path: [{ x: 5, y: 5 }] })),
    }
    const now = next(moved)
    expect(now.answers).toBe(before.answers)
    expect(now.findings).toEqual(analyse(moved).findings)
    // What is offered as a fix names parts and conductors.
    expect(now.findings).not.toEqual(before.findings)
  })

  it('does not keep them where a key is new that nobody has spoken for', () => {
    const next = analyser()
    const van = vetVan()
    const { answers } = next(van)
    const odd = { ...van, parts: van.parts.map((p, i) => (i === 0 ? { ...p, somethingNew: 1 } : p)) }
    expect(next(odd).answers).not.toBe(answers)
  })
})
