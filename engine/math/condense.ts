/**
 * A column of a linear program whose rows are all of the form |Σ coefficient·x| ≤ limit (0: an equation), with
 * what its bounds come from, so that an answer can be traced back.
 */
export interface Column {
  readonly rows: ReadonlyMap<number, number>
  readonly lower: number
  readonly upper: number
  readonly lowerFrom: Origin
  readonly upperFrom: Origin
}

export type Origin =
  /** The bound that the column came with. */
  | { readonly own: number }
  /** A row that held nothing else, by its limit. */
  | { readonly row: number }
  /** Columns that always stand together; their bounds add up. */
  | { readonly parts: readonly Column[] }

/**
 * The same program with fewer columns and rows. Columns that are alike in every row become one, their bounds
 * added; a row with one column left becomes a bound of that column. Over and over until nothing changes, so a tree
 * of limits folds up from its leaves. Rows in `kept` carry objectives and stay. About O(entries · log) a round.
 */
export function condense(
  columns: readonly Column[],
  limit: (row: number) => number,
  kept: (row: number) => boolean,
): Column[] {
  let all = [...columns]
  for (;;) {
    const merged = mergeAlike(all)
    const count = new Map<number, number>()
    for (const c of merged) for (const row of c.rows.keys()) count.set(row, (count.get(row) ?? 0) + 1)
    const alone = (row: number): boolean => count.get(row) === 1 && !kept(row)
    const tightened = merged.map((c) => tighten(c, limit, alone))
    if (merged.length === all.length && tightened.every((c, i) => c === merged[i])) return merged
    all = tightened
  }
}

function mergeAlike(columns: readonly Column[]): Column[] {
  const alike = new Map<string, Column[]>()
  for (const c of columns) {
    const key = keyOf(c)
    const group = alike.get(key)
    if (group) group.push(c)
    else alike.set(key, [c])
  }
  return [...alike.values()].map((parts) => (parts.length === 1 ? parts[0]! : sum(parts)))
}

const keys = new WeakMap<Column, string>()

/** The column's rows in writing, worked out once: columns stand in many programs. */
function keyOf(c: Column): string {
  let key = keys.get(c)
  if (key === undefined) {
    key = [...c.rows]
      .sort((a, b) => a[0] - b[0])
      .map(([row, value]) => `${row}:${value}`)
      .join()
    keys.set(c, key)
  }
  return key
}

function sum(parts: readonly Column[]): Column {
  let lower = 0
  let upper = 0
  for (const c of parts) {
    lower += c.lower
    upper += c.upper
  }
  return { rows: parts[0]!.rows, lower, upper, lowerFrom: { parts }, upperFrom: { parts } }
}

/** Rows that hold only this column become its bounds; the column itself where there is none. */
function tighten(c: Column, limit: (row: number) => number, alone: (row: number) => boolean): Column {
  const own = [...c.rows.keys()].filter(alone)
  if (own.length === 0) return c
  let { lower, upper, lowerFrom, upperFrom } = c
  for (const row of own) {
    const most = limit(row) / Math.abs(c.rows.get(row)!)
    if (most < upper) {
      upper = most
      upperFrom = { row }
    }
    if (-most > lower) {
      lower = -most
      lowerFrom = { row }
    }
  }
  const rows = new Map([...c.rows].filter(([row]) => !own.includes(row)))
  return { rows, lower, upper, lowerFrom, upperFrom }
}
