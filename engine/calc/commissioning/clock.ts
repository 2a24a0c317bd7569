/**
 * A date and time (ISO 8601, milliseconds, with its offset) that is later than others, even where the clock was set back
 * or another device's goes ahead: the entry made last counts. `at` itself where it is later already.
 */
export function laterThan(at: string, others: readonly string[]): string {
  const newest = Math.max(...others.map((o) => Date.parse(o)).filter((t) => !Number.isNaN(t)))
  if (others.length === 0 || !(newest >= Date.parse(at))) return at
  const offset = /(?:Z|[+-]\d\d:\d\d)$/.exec(at)?.[0] ?? 'Z'
  const [, sign, hours, minutes] = /([+-])(\d\d):(\d\d)/.exec(offset) ?? []
  const ahead = sign ? (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes)) * 60_000 : 0
  return `${new Date(newest + 1 + ahead).toISOString().slice(0, 23)}${offset}`
}
