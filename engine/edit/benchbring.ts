import { type Bench, type BenchRecord, type Built, type BuiltWhat, NO_BENCH } from '../model/bench'
import { mergeBench } from '../model/benchmerge'
import type { Conductor, ConductorId, Design } from '../model/design'
import { conductorById } from '../model/lookup'
import { builtFacts, sameValue } from './benchfacts'
import { keptAside } from './benchrecord'
import type { Edit, EditOf, Refusal } from './edit'
import { refuse } from './refuse'

/** Two devices have recorded different facts of one conductor; the later counts, the other stays listed. */
export interface BenchConflict {
  readonly conductor: ConductorId
  readonly number: string
  readonly what: BuiltWhat
  readonly kept: Built
  readonly others: readonly Built[]
}

/** What the file of another device brings, and the edit that brings it: records of the bench and of commissioning. */
export interface Brought {
  readonly edit: EditOf<'all'>
  /** Steps newly done, taken back, and ticked again. */
  readonly done: number
  readonly takenBack: number
  readonly again: number
  readonly facts: number
  readonly photos: number
  readonly torques: number
  /** Lines of the commissioning record. */
  readonly readings: number
  readonly conflicts: readonly BenchConflict[]
  /** Numbers of conductors that the drawing here does not have; their records are kept aside. */
  readonly aside: readonly string[]
  /** The drawing of that file is another one than here; only the records are brought. */
  readonly drawingDiffers: boolean
  /** Nothing that is not here already. */
  readonly nothing: boolean
}

/** Compares the records of another device's file of the same design with those here. O(records). */
export function bringFrom(mine: Design, theirs: Design): Brought | Refusal {
  if (mine.id !== theirs.id)
    return refuse('other-design', 'This is a file of another design: its records belong to other conductors.')
  const bring: Bench = {
    ...(theirs.bench ?? NO_BENCH),
    conductors: (theirs.bench?.conductors ?? []).map((r) => placed(r, mine, theirs)),
  }
  const before = mine.bench ?? NO_BENCH
  const readings = newReadings(mine, theirs)
  const merged = mergeBench(before, bring)
  const after: Design = { ...mine, bench: merged }
  const wasAside = new Set(keptAside(mine).map((a) => a.record.conductor))
  return {
    edit: { do: 'all', edits: [{ do: 'bench', bring }, ...readings.edits] },
    ...ticksBrought(before, merged),
    facts: news(before, merged, (r) => r.built),
    photos: news(before, merged, (r) => r.photos),
    torques: (merged.torques ?? []).filter((t) => !before.torques?.includes(t)).length,
    readings: readings.count,
    conflicts: mine.conductors.flatMap((c) => conflictsAt(mine, after, c)),
    aside: keptAside(after).flatMap((a) => (wasAside.has(a.record.conductor) ? [] : a.number)),
    drawingDiffers: drawn(mine) !== drawn(theirs),
    nothing: merged === before && readings.count === 0,
  }
}

/** Lines that are not here yet; readings first, as signatures stand on them. */
function newReadings(
  mine: Design,
  theirs: Design,
): { readonly count: number; readonly edits: readonly Edit[] } {
  const known = new Set(mine.commissioning?.map((r) => r.id))
  const lines = (theirs.commissioning ?? []).filter((r) => !known.has(r.id))
  const edits = (['entry', 'signing'] as const).flatMap((is): Edit[] => {
    const records = lines.filter((r) => r.is === is)
    return records.length === 0 ? [] : [{ do: 'record', records }]
  })
  return { count: lines.length, edits }
}

/**
 * A record under the id that its conductor has here. Two devices may have given the same id to different conductors:
 * theirs is then kept aside, under a name that tells them apart.
 */
function placed(record: BenchRecord, mine: Design, theirs: Design): BenchRecord {
  const asideHere = mine.conductors.find((c) => apart(c) === record.conductor)
  if (asideHere) return { ...record, conductor: asideHere.id }
  const [here, there] = [conductorById(mine, record.conductor), conductorById(theirs, record.conductor)]
  if (!here || !there || isSame(here, there)) return record
  return { ...record, conductor: apart(there) }
}

const apart = ({ id, number }: Conductor): string => `${id}~${number.replaceAll('/', ' ')}`.slice(0, 64)

const isSame = (a: Conductor, b: Conductor): boolean =>
  a.number === b.number || sameValue(a.from, b.from) || sameValue(a.to, b.to)

function ticksBrought(before: Bench, after: Bench): Pick<Brought, 'done' | 'takenBack' | 'again'> {
  const was = new Map(before.conductors.map((r) => [r.conductor, r]))
  const count = { done: 0, takenBack: 0, again: 0 }
  for (const { conductor, ticks } of after.conductors)
    for (const tick of ticks) {
      const old = was.get(conductor)?.ticks.find((t) => t.step === tick.step)
      if (old === tick) continue
      if (!tick.done) count.takenBack += old?.done ? 1 : 0
      else if (old?.done) count.again += 1
      else count.done += 1
    }
  return count
}

function news<T>(before: Bench, after: Bench, of: (r: BenchRecord) => readonly T[] | undefined): number {
  const known = new Set(before.conductors.flatMap((r) => of(r) ?? []))
  return after.conductors.flatMap((r) => of(r) ?? []).filter((entry) => !known.has(entry)).length
}

/** Those that the merge brings about; what stood against each other before is not told again. */
function conflictsAt(mine: Design, after: Design, c: Conductor): BenchConflict[] {
  const before = builtFacts(mine, c.id).flatMap((f) => f.others)
  return builtFacts(after, c.id).flatMap(({ fact, others }) =>
    others.some((o) => !before.includes(o))
      ? [{ conductor: c.id, number: c.number, what: fact.what, kept: fact, others }]
      : [],
  )
}

/** Everything but the records, as text that can be compared. */
function drawn(design: Design): string {
  return JSON.stringify([design.parts, design.conductors, design.ownConductors ?? []])
}
