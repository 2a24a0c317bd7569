import {
  BENCH_BOUNDS,
  type Bench,
  type BenchRecord,
  type BenchStep,
  type BuiltFact,
  NO_BENCH,
  type Stamp,
} from '../model/bench'
import { mergeBench } from '../model/benchmerge'
import type { Conductor, Design, TerminalRef } from '../model/design'
import { conductorAsBuilt } from './benchfacts'
import { recordOf } from './benchrecord'
import { workedOn } from './benchsteps'
import { done } from './change'
import type { EditOf, EditResult, Refusal } from './edit'
import { refuse } from './refuse'

/** Brings records of the bench into the design; a tick, a fact, and all that another device has recorded alike. */
export function applyBench(design: Design, { bring }: EditOf<'bench'>): EditResult {
  const fault = faultOf(bring)
  if (fault) return fault
  const bench = mergeBench(design.bench ?? NO_BENCH, bring)
  return done(bench === (design.bench ?? NO_BENCH) ? design : { ...design, bench })
}

function faultOf({ conductors, torques = [], devices = [] }: Bench): Refusal | null {
  for (const { built = [], photos = [] } of conductors) {
    for (const { what, value } of built) {
      if (value === null) continue
      if (what === 'lengthM' && !(value > 0 && value <= BENCH_BOUNDS.lengthM))
        return refuse('length', `A length is more than 0 and at most ${BENCH_BOUNDS.lengthM} m.`)
      if (what === 'note' && value.length > BENCH_BOUNDS.note)
        return refuse('long-note', `A remark has at most ${BENCH_BOUNDS.note} letters.`)
    }
    if (photos.some(({ jpeg }) => jpeg !== null && jpeg.length > BENCH_BOUNDS.jpeg))
      return refuse('large-photo', 'A photo of more than 60 kB is not kept in the design file.')
  }
  const [least, most] = BENCH_BOUNDS.newtonMetres
  if (torques.some(({ newtonMetres: t }) => t !== null && !(t >= least && t <= most)))
    return refuse('torque', `A torque lies between ${least} and ${most} N·m.`)
  return devices.some(({ name }) => name.trim() === '' || name.length > BENCH_BOUNDS.deviceName)
    ? refuse('device-name', `A device has a name of at most ${BENCH_BOUNDS.deviceName} letters.`)
    : null
}

/**
 * A stamp later than all that it stands in for, even where the clock of this device is behind the other's.
 * `now` and the times of `before` in ISO 8601.
 */
function stampAfter({ at: now, by }: Stamp, before: readonly { readonly at: string }[]): Stamp {
  const newest = latest(before) ?? ''
  return { at: newest >= now ? new Date(Date.parse(newest) + 1).toISOString() : now, by }
}

/** The newest time; undefined: there is none. */
const latest = (entries: readonly { readonly at: string }[]): string | undefined =>
  entries
    .map(({ at }) => at)
    .sort()
    .at(-1)

const bringOf = (record: BenchRecord): EditOf<'bench'> => ({ do: 'bench', bring: { conductors: [record] } })

/** Ticks a step of a conductor, or takes the tick back. */
export function tickEdit(
  design: Design,
  c: Conductor,
  step: BenchStep,
  isDone: boolean,
  now: Stamp,
): EditOf<'bench'> {
  const before = recordOf(design, c.id)?.ticks.filter((t) => t.step === step) ?? []
  const on = isDone ? { on: workedOn(design, conductorAsBuilt(design, c), step) } : {}
  const tick = { step, done: isDone, ...on, number: c.number, ...stampAfter(now, before) }
  return bringOf({ conductor: c.id, ticks: [tick] })
}

/** Records what a conductor is like as built; null: as drawn after all. It stands above what other devices have said. */
export function builtEdit(design: Design, c: Conductor, fact: BuiltFact, now: Stamp): EditOf<'bench'> {
  const before = recordOf(design, c.id)?.built?.filter((f) => f.what === fact.what) ?? []
  const knew = latest(before.filter((f) => f.by !== now.by))
  const built = { ...fact, number: c.number, ...stampAfter(now, before), ...(knew ? { knew } : {}) }
  return bringOf({ conductor: c.id, ticks: [], built: [built] })
}

/** Adds a small photo (base64 of a JPEG) under a new id, or takes one out (null). */
export function photoEdit(
  design: Design,
  c: Conductor,
  photo: string,
  jpeg: string | null,
  now: Stamp,
): EditOf<'bench'> {
  const before = recordOf(design, c.id)?.photos?.filter((p) => p.photo === photo) ?? []
  const entry = { photo, jpeg, number: c.number, ...stampAfter(now, before) }
  return bringOf({ conductor: c.id, ticks: [], photos: [entry] })
}

/** Records the torque that the maker of a part states for a terminal, N·m; null: not stated after all. */
export function torqueEdit(
  design: Design,
  { part, terminal }: TerminalRef,
  newtonMetres: number | null,
  now: Stamp,
): EditOf<'bench'> {
  const before = design.bench?.torques?.filter((t) => t.part === part && t.terminal === terminal) ?? []
  const torque = { part, terminal, newtonMetres, ...stampAfter(now, before) }
  return { do: 'bench', bring: { conductors: [], torques: [torque] } }
}

/** Says what people call a device. */
export function deviceEdit(design: Design, name: string, now: Stamp): EditOf<'bench'> {
  const before = design.bench?.devices?.filter((d) => d.device === now.by) ?? []
  const { at, by } = stampAfter(now, before)
  return { do: 'bench', bring: { conductors: [], devices: [{ device: by, name: name.trim(), at }] } }
}

/** The torque that the maker states for a terminal, N·m; null: nobody has recorded it. */
export const statedTorque = ({ bench }: Design, { part, terminal }: TerminalRef): number | null =>
  bench?.torques?.find((t) => t.part === part && t.terminal === terminal)?.newtonMetres ?? null
