/** Seeded random figures, the same on every machine: mulberry32, a public-domain generator (from memory). */
export class Random {
  private state: number

  constructor(seed: number) {
    this.state = Math.imul(seed, 2654435761) >>> 0
  }

  /** In [0, 1). */
  unit(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0
    let t = Math.imul(this.state ^ (this.state >>> 15), this.state | 1)
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }

  /** Whole, from `from` up to and with `to`. */
  whole(from: number, to: number): number {
    return from + Math.floor(this.unit() * (to - from + 1))
  }

  between(from: number, to: number): number {
    return from + this.unit() * (to - from)
  }

  chance(p: number): boolean {
    return this.unit() < p
  }

  pick<T>(from: readonly T[]): T {
    return from[Math.floor(this.unit() * from.length)]!
  }
}
