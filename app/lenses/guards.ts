import type { Answers, ConductorId, Guard, PartId, RunAnswer } from '../../engine'

/** Everything that limits a conductor from either end, each once. */
export function guardsOf({ from, to, sustained, cause }: RunAnswer): readonly Guard[] {
  const ends = [from, to, ...(sustained ? [sustained] : []), ...(cause ? [{ value: cause }] : [])]
  const found = new Map<string, Guard>()
  for (const end of ends)
    if ('value' in end) for (const g of end.value.guards) found.set(`${g.is} ${g.part}/${g.key}`, g)
  return [...found.values()]
}

const guarded = new WeakMap<Answers['runs'], ReadonlyMap<PartId, ReadonlySet<ConductorId>>>()

/** The conductors that each protective device guards. */
export function guardedBy(runs: Answers['runs']): ReadonlyMap<PartId, ReadonlySet<ConductorId>> {
  const known = guarded.get(runs)
  if (known) return known
  const by = new Map<PartId, Set<ConductorId>>()
  for (const [id, run] of runs)
    for (const { is, part } of guardsOf(run))
      if (is === 'device') by.set(part, (by.get(part) ?? new Set()).add(id))
  guarded.set(runs, by)
  return by
}
