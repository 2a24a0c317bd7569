import {
  type BenchStep,
  BUILT_WORDS,
  type BuiltFact,
  builtEdit,
  type Conductor,
  type Difference,
  deviceEdit,
  photoEdit,
  STEP_WORDS,
  type TerminalRef,
  takeOverEdit,
  tickEdit,
  torqueEdit,
} from '../../../engine'
import { terminalName } from '../../store/join'
import { doEdit, useOpen } from '../../store/open'
import { stampNow } from './device'

/** What the worker does on the page: each one undo step, stamped with time and device. */

const design = () => useOpen.getState().design

export function tick(c: Conductor, step: BenchStep, done: boolean): boolean {
  const words = `${c.number} ${STEP_WORDS[step].toLowerCase()}`
  return doEdit(done ? words : `Not ${words}`, tickEdit(design(), c, step, done, stampNow()))
}

export const recordBuilt = (c: Conductor, fact: BuiltFact): boolean =>
  doEdit(
    fact.value === null
      ? `${BUILT_WORDS[fact.what]} of ${c.number} as drawn`
      : `${BUILT_WORDS[fact.what]} of ${c.number} as built`,
    builtEdit(design(), c, fact, stampNow()),
  )

/** Takes back all that was recorded as built otherwise, in one step. */
export const recordAsDrawn = (c: Conductor, whats: readonly BuiltFact['what'][]): boolean =>
  doEdit(`${c.number} as drawn after all`, {
    do: 'all',
    edits: whats.map((what) => builtEdit(design(), c, { what, value: null } as BuiltFact, stampNow())),
  })

export const recordTorque = (at: TerminalRef, newtonMetres: number | null): boolean =>
  doEdit(`Torque of ${terminalName(at)}`, torqueEdit(design(), at, newtonMetres, stampNow()))

export const addPhoto = (c: Conductor, jpeg: string): boolean =>
  doEdit(`Photo of ${c.number}`, photoEdit(design(), c, crypto.randomUUID(), jpeg, stampNow()))

export const removePhoto = (c: Conductor, photo: string): boolean =>
  doEdit(`Take out a photo of ${c.number}`, photoEdit(design(), c, photo, null, stampNow()))

export const nameDevice = (name: string): boolean =>
  doEdit('Name of this device', deviceEdit(design(), name, stampNow()))

export const takeOver = (d: Difference, number: string): boolean =>
  doEdit(`Draw ${number} as built`, takeOverEdit(d))
