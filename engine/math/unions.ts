/**
 * Sets of keys that grow together. Keys are numbered as they are first seen; a set goes by the number of the set
 * that was named first when two were joined. Near O(1) a call: paths are halved on the way.
 */
export class Unions {
  private readonly index = new Map<string, number>()
  private readonly keys: string[] = []
  private readonly parent: number[] = []

  join(a: string, b: string): void {
    const u = this.numberOf(a)
    const v = this.numberOf(b)
    if (u !== v) this.parent[v] = u
  }

  /** Number of the set of a key; a key not seen before is a set of its own. */
  numberOf(key: string): number {
    let at = this.index.get(key)
    if (at === undefined) {
      at = this.keys.length
      this.index.set(key, at)
      this.keys.push(key)
      this.parent.push(at)
    }
    while (this.parent[at] !== at) {
      this.parent[at] = this.parent[this.parent[at]!]!
      at = this.parent[at]!
    }
    return at
  }

  /** The key that stands for the set of a key: the same for all of them. */
  nameOf(key: string): string {
    return this.keys[this.numberOf(key)]!
  }

  /** Name of the set of every key seen so far. */
  names(): Map<string, string> {
    return new Map(this.keys.map((key) => [key, this.nameOf(key)]))
  }
}
