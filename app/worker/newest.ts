/** What goes to a worker and comes back carries the number of the wish. */
export interface Numbered<T> {
  readonly seq: number
  readonly body: T
}

/** A worker's answer: what was asked for, or why it broke off. */
export type Outcome<T> = { readonly done: T } | { readonly failed: string }

/**
 * Asks one wish at a time; while it is under way only the newest of the others waits. So a slow answer never queues up
 * behind it, and the last wish is always answered.
 */
export class Newest<Wish, Result> {
  private seq = 0
  private current: Numbered<Wish> | null = null
  private waiting: Numbered<Wish> | null = null

  constructor(
    private readonly post: (wish: Numbered<Wish>) => void,
    private readonly take: (outcome: Outcome<Result>, wish: Wish) => void,
  ) {}

  ask(body: Wish): void {
    const wish = { seq: ++this.seq, body }
    if (this.current) this.waiting = wish
    else this.send(wish)
  }

  receive({ seq, body }: Numbered<Outcome<Result>>): void {
    const { current } = this
    if (!current || seq !== current.seq) return
    this.current = null
    this.take(body, current.body)
    const next = this.waiting
    this.waiting = null
    if (next) this.send(next)
  }

  private send(wish: Numbered<Wish>): void {
    this.current = wish
    this.post(wish)
  }
}
