import type { BenchConflict, Brought } from '../edit/benchbring'
import type { Built } from '../model/bench'
import type { Design } from '../model/design'
import { BUILT_WORDS, builtWords } from './bench'
import { listed } from './names'

/** What another device's file brings, one short line each. */
export function broughtWords(b: Brought): string[] {
  if (b.nothing) return ['It brings nothing that is not here already.']
  return [
    many(b.done, 'step newly done', 'steps newly done'),
    many(b.again, 'step recorded later than here', 'steps recorded later than here'),
    many(b.takenBack, 'tick taken back', 'ticks taken back'),
    many(b.facts, 'record of what was built otherwise', 'records of what was built otherwise'),
    many(b.photos, 'photo', 'photos'),
    many(b.torques, 'torque', 'torques'),
    many(b.readings, 'line of the commissioning record', 'lines of the commissioning record'),
    ...(b.aside.length > 0
      ? [`Kept aside, as the drawing here has no such conductor: ${listed(b.aside, 12)}`]
      : []),
    ...(b.drawingDiffers
      ? [
          'The drawing in that file differs from the one here. Only records are brought; the drawing here stays.',
        ]
      : []),
  ].filter((line) => line !== '')
}

const many = (count: number, one: string, more: string): string =>
  count === 0 ? '' : `${count} ${count === 1 ? one : more}`

/** "W12, size: 2.5 mm² (Phone) counts; 4 mm² (Bench tablet) was recorded before it." `design` with both records. */
export function conflictWords(design: Design, { number, what, kept, others }: BenchConflict): string {
  const before = others.map((o) => saidWords(design, o)).join(', ')
  const were = others.length === 1 ? 'was' : 'were'
  return `${number}, ${BUILT_WORDS[what].toLowerCase()}: ${saidWords(design, kept)} counts, as it is the latest; ${before} ${were} recorded before it.`
}

/** "2.5 mm² (Bench tablet)". */
export function saidWords(design: Design, { what, value, by }: Built): string {
  const words = value === null ? 'as drawn' : builtWords(design, what, value)
  return `${words} (${deviceName(design, by)})`
}

/** What people call a device; its id where it has no name yet. */
export const deviceName = ({ bench }: Design, id: string): string =>
  bench?.devices?.find((d) => d.device === id)?.name ?? `device ${id}`
