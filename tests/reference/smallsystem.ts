import type { Design } from '../../engine/model/design'
import { type DesignBuilder, design } from '../build'
import { Random } from './random'

const SIZES = ['2.5mm2', '6mm2', '16mm2', '35mm2'] as const

/**
 * An invented system small enough for plain methods, every figure typed: one or two batteries, each with its fuse,
 * bars, a block of fuses with loads, chargers at times; and at random an isolator, parallel conductors, two switches in
 * parallel, a changeover relay between two feeds, a frame beside the wired returns.
 */
export function smallSystem(seed: number): Design {
  const r = new Random(seed)
  let d: DesignBuilder = design({ systemV: 12, ruleSet: 'metric-automotive', ambientC: 30 })
    .part('busbar', 'W1', { studs: 12, pole: 'positive', ratingA: 600 })
    .part('busbar', 'W2', { studs: 12, pole: 'negative', ratingA: 600 })
  const join = (from: string, to: string): void => {
    d = d.join(from, to, { size: r.pick(SIZES), lengthM: Number(r.between(0.2, 6).toFixed(2)) })
  }
  let stud = 0
  const next = (): string => `${1 + (stud % 12)}${stud++ < 12 ? 'l' : 'r'}`
  const batteries = r.whole(1, 2)
  for (let i = 1; i <= batteries; i++) {
    d = d
      .part('battery', `G${i}`, {
        capacityAh: 100,
        dischargeA: r.whole(40, 200),
        chargeA: r.whole(20, 100),
        internalMOhm: r.whole(2, 9),
      })
      .part('fuse-cartridge', `F${i}`, { ratingA: r.pick([80, 100, 150]), voltageV: 80, breakingKA: 20 })
    join(`G${i}.+`, `F${i}.1`)
    join(`F${i}.2`, `W1.${next()}`)
    join(`G${i}.-`, `W2.${next()}`)
  }
  let feed = `W1.${next()}`
  if (r.chance(0.5)) {
    d = d.part('isolator', 'Q1', { ratingA: 300 })
    join(feed, 'Q1.1')
    feed = 'Q1.2'
  }
  const ways = r.whole(2, 4)
  d = d.part('fuse-block', 'FB1', {
    ratingA: 100,
    ways: Array.from({ length: ways }, () => ({ ratingA: r.pick([5, 10, 15, 25]), label: '' })),
  })
  join(feed, 'FB1.in')
  if (r.chance(0.3)) join(feed, 'FB1.in')
  d = d.part('busbar', 'W3', { studs: 8, pole: 'negative', ratingA: 300 })
  join('W3.1l', `W2.${next()}`)
  if (r.chance(0.3)) join('W3.2l', `W2.${next()}`)
  const frame = r.chance(0.4)
  if (frame) {
    d = d.part('chassis-point', 'X1').part('chassis-point', 'X2')
    join('X1.31', `W2.${next()}`)
    join('X2.31', 'W3.8l')
  }
  for (let i = 1; i <= ways; i++) {
    d = d.part('load', `E${i}`, { currentA: r.whole(1, 12), nature: 'current' })
    const how = r.unit()
    if (how < 0.2) {
      d = d.part('panel-switch', `S${i}`, { ratingA: 20 }).part('panel-switch', `SS${i}`, { ratingA: 20 })
      for (const s of [`S${i}`, `SS${i}`]) {
        join(`FB1.${i}`, `${s}.1`)
        join(`${s}.2`, `E${i}.+`)
      }
    } else join(`FB1.${i}`, `E${i}.+`)
    join(`E${i}.-`, `W3.${i + 2}r`)
  }
  if (r.chance(0.4)) {
    d = d
      .part('relay-changeover', 'K1', { ratingA: 30, breakRatingA: 20, coilA: 0.15 })
      .part('fuse-cartridge', 'F8', { ratingA: 30, voltageV: 80, breakingKA: 20 })
      .part('load', 'E9', { currentA: r.whole(2, 9), nature: 'current' })
    join(`W1.${next()}`, 'F8.1')
    join('F8.2', 'K1.87')
    join('FB1.1', 'K1.87a')
    join('K1.30', 'E9.+')
    join('E9.-', 'W3.7r')
    join('FB1.2', 'K1.86')
    join('K1.85', 'W3.8r')
  }
  if (r.chance(0.6)) {
    d = d.part('mains-charger', 'T1', { outputA: r.whole(5, 40) })
    join('T1.+', `W1.${next()}`)
    join('T1.-', `W2.${next()}`)
  }
  return d.build()
}
