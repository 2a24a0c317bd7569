import type { ConductorId, Finding, Level, PartId } from '../../engine'
import { useLatest } from '../store/latest'

const RANK: Readonly<Record<Level, number>> = { danger: 3, warning: 2, note: 1, 'not-checked': 0 }

interface Marked {
  readonly parts: ReadonlyMap<PartId, Level>
  readonly conductors: ReadonlyMap<ConductorId, Level>
}

let last: { readonly findings: readonly Finding[]; readonly marked: Marked } | null = null

/** The gravest level at each part and conductor, for dangers and warnings only: the rest is in the list. */
export function markedBy(findings: readonly Finding[]): Marked {
  if (last?.findings === findings) return last.marked
  const parts = new Map<PartId, Level>()
  const conductors = new Map<ConductorId, Level>()
  const raise = (map: Map<string, Level>, id: string, level: Level) => {
    const before = map.get(id)
    if (before === undefined || RANK[level] > RANK[before]) map.set(id, level)
  }
  for (const { level, parts: ps, conductors: cs } of findings) {
    if (RANK[level] < RANK.warning) continue
    // A finding about conductors names the parts it starts from as well; those are not at fault themselves.
    if (cs.length === 0) for (const id of ps) raise(parts, id, level)
    for (const id of cs) raise(conductors, id, level)
  }
  const marked = { parts, conductors }
  last = { findings, marked }
  return marked
}

export const useTrouble = (part: PartId): Level | undefined =>
  useLatest((s) => markedBy(s.findings).parts.get(part))

export const useRunTrouble = (conductor: ConductorId): Level | undefined =>
  useLatest((s) => markedBy(s.findings).conductors.get(conductor))
