import type { BenchRecord } from '../model/bench'
import type { ConductorId, Design } from '../model/design'
import { conductorById } from '../model/lookup'

const indexes = new WeakMap<readonly BenchRecord[], ReadonlyMap<ConductorId, BenchRecord>>()

/** What was recorded of a conductor. O(1) after the first, which is O(records). */
export function recordOf({ bench }: Design, id: ConductorId): BenchRecord | undefined {
  if (!bench) return undefined
  let index = indexes.get(bench.conductors)
  if (!index) {
    index = new Map(bench.conductors.map((r) => [r.conductor, r]))
    indexes.set(bench.conductors, index)
  }
  return index.get(id)
}

/** A record of a conductor that is not in the drawing: kept, and told. */
export interface KeptAside {
  readonly record: BenchRecord
  /** The number that it had last. */
  readonly number: string
}

export function keptAside(design: Design): readonly KeptAside[] {
  const records = design.bench?.conductors ?? []
  return records
    .filter((r) => !conductorById(design, r.conductor))
    .map((r) => ({ record: r, number: lastNumber(r) }))
}

/** The number that a conductor had when something was last recorded of it. */
export function lastNumber({ conductor, ticks, built = [], photos = [] }: BenchRecord): string {
  const entries = [...ticks, ...built, ...photos]
  const last = entries.reduce((a, b) => (b.at > a.at ? b : a), entries[0] ?? { number: conductor, at: '' })
  return last.number
}
