/** Names given out once each. A name that is taken gets the next free one of its letters: a second "F1" is "F2". */
export class TakenNames {
  private readonly taken = new Set<string>()
  private readonly next = new Map<string, number>()

  /** Amortised O(1), however often one name comes again. */
  take(wanted: string): string {
    let name = wanted
    if (this.taken.has(name)) {
      const stem = wanted.replace(/\d+$/, '')
      let n = this.next.get(stem) ?? 1
      while (this.taken.has(`${stem}${n}`)) n++
      this.next.set(stem, n + 1)
      name = `${stem}${n}`
    }
    this.taken.add(name)
    return name
  }
}
