/**
 * Sets of numbered points that grow together, with the difference of a potential between the points of a set.
 * Joining two points of one set again changes nothing: the first figure counts. Near O(1) a call.
 */
export class Potentials {
  private readonly parent: Int32Array
  /** Potential of each point above its parent. */
  private readonly above: Float64Array

  constructor(points: number) {
    this.parent = Int32Array.from({ length: points }, (_, i) => i)
    this.above = new Float64Array(points)
  }

  /** States that `high` lies above `low` by a figure. */
  join(high: number, low: number, figure: number): void {
    const u = this.root(high)
    const v = this.root(low)
    if (u === v) return
    this.parent[u] = v
    this.above[u] = figure + this.above[low]! - this.above[high]!
  }

  /** How far `high` lies above `low`; undefined where they are not joined. */
  across(high: number, low: number): number | undefined {
    if (this.root(high) !== this.root(low)) return undefined
    return this.above[high]! - this.above[low]!
  }

  /** The point that stands for a set. Afterwards the point hangs from it directly, or is it. */
  private root(point: number): number {
    const way: number[] = []
    let at = point
    while (this.parent[at] !== at) {
      way.push(at)
      at = this.parent[at]!
    }
    for (let i = way.length - 2; i >= 0; i--) {
      const p = way[i]!
      this.above[p]! += this.above[way[i + 1]!]!
      this.parent[p] = at
    }
    return at
  }
}
