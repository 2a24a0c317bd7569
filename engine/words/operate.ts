import type { NoOperatingPoint, OperatingNote, OperatingNoteKind } from '../calc/operating/state'
import type { Design } from '../model/design'
import { conductorName, figure, listed, partName } from './names'

/** A note on an operating point in one or two short sentences. */
export function operatingNoteWords(note: OperatingNote, design: Design): string {
  const who = listed([
    ...note.parts.map((id) => partName(design, id)),
    ...note.conductors.map((id) => conductorName(design, id)),
  ])
  const several = note.parts.length + note.conductors.length > 1
  const past = `${figure(note.amps ?? 0, 'A')} of ${figure(note.limitA ?? 0, 'A')}`
  return NOTES[note.note](who, several, past)
}

type NoteWords = (who: string, several: boolean, past: string) => string

const NOTES: Readonly<Record<OperatingNoteKind, NoteWords>> = {
  'no-battery-feeds': (who, n) => `${who} ${n ? 'are' : 'is'} fed by no battery, however the switches stand.`,
  reversed: (who, n) => `${who} ${n ? 'are' : 'is'} wired the wrong way round, and taken as dead.`,
  'missing-figure': (who, n) => `${who} ${n ? 'are' : 'is'} left out: a figure is missing.`,
  'typical-resistance': (who) => `A usual internal resistance is taken for ${who}, as none is typed.`,
  'missing-run': (who) => `A resistance is guessed for ${who}: size or length is missing.`,
  'missing-rating': (who) => `A contact resistance is guessed for ${who}: the rating is missing.`,
  starved: (who, n) =>
    `${who} ${n ? 'get' : 'gets'} too little voltage, and ${n ? 'are' : 'is'} taken as stopped.`,
  'charge-limit': (who, _, past) => `${who} is charged above its limit: ${past}.`,
  'discharge-limit': (who, _, past) => `${who} gives more than its limit: ${past}.`,
  'above-rating': (who, _, past) => `${who} carries more than its rating: ${past}.`,
  'converter-limit': (who, _, past) => `${who} is asked for more than its limit: ${past}.`,
  'nothing-to-charge': (who, n) => `${who} ${n ? 'rest' : 'rests'}: no battery is joined to charge.`,
  'full-current': (who, n) =>
    `${who} ${n ? 'are' : 'is'} taken to give the full current set; as a battery fills, less flows and the voltage stands higher.`,
  'holds-voltage': (who, n) =>
    `${who} ${n ? 'hold' : 'holds'} the voltage of the charge stage, and ${n ? 'give' : 'gives'} less than the full current.`,
  'taken-as-full': (who, n) =>
    `${who} ${n ? 'are' : 'is'} taken as full, as a charger is in absorption or float: next to no charge current flows.`,
  'typical-charge-voltage': (who) =>
    `A usual voltage is taken for the charge stage of ${who}, as none is typed.`,
  'no-array': (who, n) => `${who} ${n ? 'have' : 'has'} no array at the input.`,
  'shared-array': (who) => `${who} share one array; its power is divided by their limits.`,
  'missing-threshold': (who, n) =>
    `${who} ${n ? 'stay' : 'stays'} as set: the voltages at which ${n ? 'they switch' : 'it switches'} are not typed.`,
  'both-coils': (who, n) => `Both coils of ${who} are fed: ${n ? 'they stay' : 'it stays'} as before.`,
}

/** Why there is no operating point, in one or two short sentences. */
export function noOperatingWords({ reason, parts }: NoOperatingPoint, design: Design): string {
  const who = listed(parts.map((id) => partName(design, id)))
  if (reason === 'no-battery') return 'Nothing can run: the design has no battery.'
  if (reason === 'relays-chatter') return `${who} would switch on and off without end.`
  return `No steady state was found${who === '' ? '' : `; look at ${who}`}.`
}
