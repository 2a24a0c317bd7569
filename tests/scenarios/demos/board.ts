import type { Values } from '../../../engine/model/fields'
import type { JoinWords } from '../../build'
import type { Draft } from './draft'

/** What may be otherwise on the simplest board. */
interface Sound {
  readonly fuseA?: number
  readonly lampA?: number
  readonly size?: string
  readonly lengthM?: number
  readonly lamp?: Values
  readonly battery?: Values
  readonly fuse?: Values
  readonly words?: JoinWords
  readonly backWords?: JoinWords
}

/** One training board being wired: its parts are numbered after the board. */
export class Board {
  constructor(
    private readonly d: Draft,
    readonly n: number,
  ) {}

  part(kind: string, letter: string, name: string, values: Values = {}): string {
    const designation = `${letter}${this.n}${this.count(letter)}`
    this.d.part(kind, designation, name, `board ${this.n}`, values)
    return designation
  }
  private readonly used = new Map<string, number>()
  private count(letter: string): number {
    const n = (this.used.get(letter) ?? 0) + 1
    this.used.set(letter, n)
    return n
  }

  battery(values: Values = {}): string {
    return this.part('battery', 'G', 'Battery', {
      chemistry: 'agm',
      volts: '12',
      capacityAh: 20,
      dischargeA: 100,
      chargeA: 10,
      internalMOhm: 20,
      ...values,
    })
  }
  fuse(ratingA: number, values: Values = {}): string {
    return this.part('fuse-blade', 'F', 'Fuse', {
      ratingA,
      class: 'c',
      voltageV: 32,
      breakingKA: 2,
      breakingV: 32,
      ...values,
    })
  }
  lamp(currentA: number, values: Values = {}): string {
    return this.part('lamp', 'E', 'Lamp', { currentA, ...values })
  }
  run(from: string, to: string, size = '10awg', lengthM = 0.4, words: JoinWords = {}): string {
    return this.d.run(from, to, size, lengthM, words)
  }
  back(from: string, to: string, size = '10awg', lengthM = 0.4, words: JoinWords = {}): string {
    return this.d.back(from, to, size, lengthM, words)
  }

  /** A battery, its fuse, a lamp, the feed and the return: the board on which nothing is wrong. */
  sound(o: Sound = {}) {
    const g = this.battery(o.battery)
    const f = this.fuse(o.fuseA ?? 10, o.fuse)
    const e = this.lamp(o.lampA ?? 4, o.lamp)
    const head = this.run(`${g}.+`, `${f}.1`, '10awg', 0.15)
    const feed = this.run(`${f}.2`, `${e}.+`, o.size ?? '14awg', o.lengthM ?? 1, o.words)
    const back = this.back(`${e}.-`, `${g}.-`, o.size ?? '14awg', o.lengthM ?? 1, {
      ...(o.backWords ?? o.words),
      returnOf: feed,
    })
    return { g, f, e, head, feed, back }
  }

  /** The same with a battery shunt in the return. */
  shunted(values: Values = {}, battery: Values = {}) {
    const [g, f, e] = [this.battery(battery), this.fuse(10), this.lamp(4)]
    const s = this.part('shunt', 'B', 'Battery shunt', {
      role: 'battery',
      ratingA: 100,
      millivolts: 50,
      ...values,
    })
    this.run(`${g}.+`, `${f}.1`, '10awg', 0.15)
    const feed = this.run(`${f}.2`, `${e}.+`, '14awg', 1)
    this.back(`${e}.-`, `${s}.s`, '14awg', 1, { returnOf: feed })
    this.back(`${s}.b`, `${g}.-`, '10awg', 0.3)
    return { g, f, e, s }
  }
}
