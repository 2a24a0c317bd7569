/** Vertices in doubly linked lists by degree; taking the least looks upward from the last least. */
export class DegreeQueue {
  private readonly first: Int32Array
  private readonly next: Int32Array
  private readonly previous: Int32Array
  private readonly degree: Int32Array
  private least = 0

  constructor(n: number) {
    this.first = new Int32Array(n + 1).fill(-1)
    this.next = new Int32Array(n).fill(-1)
    this.previous = new Int32Array(n).fill(-1)
    this.degree = new Int32Array(n)
  }

  put(v: number, degree: number): void {
    this.degree[v] = degree
    const head = this.first[degree]!
    this.next[v] = head
    this.previous[v] = -1
    if (head !== -1) this.previous[head] = v
    this.first[degree] = v
    if (degree < this.least) this.least = degree
  }

  move(v: number, degree: number): void {
    this.remove(v)
    this.put(v, degree)
  }

  takeLeast(): number {
    while (this.first[this.least] === -1) this.least++
    const v = this.first[this.least]!
    this.remove(v)
    return v
  }

  private remove(v: number): void {
    const before = this.previous[v]!
    const after = this.next[v]!
    if (before === -1) this.first[this.degree[v]!] = after
    else this.next[before] = after
    if (after !== -1) this.previous[after] = before
  }
}
