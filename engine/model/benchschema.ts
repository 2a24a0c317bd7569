import { z } from 'zod'
import { BENCH_BOUNDS, BENCH_STEPS } from './bench'
import { figure, flag, id, name, reference, says, text } from './schemaforms'

const INSTANT = 'a time such as 2026-03-04T09:30:00.000Z'
const instant = () => z.string(says(INSTANT)).regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/, says(INSTANT))

const lengthM = () => {
  const words = says(`a length over 0 and up to ${BENCH_BOUNDS.lengthM} m`)
  return z.number(words).gt(0, words).max(BENCH_BOUNDS.lengthM, words)
}

const stamp = { at: instant(), by: id() }
const entry = { ...stamp, number: name(40) }
const form = () => text(64).nullable().exactOptional()

const workedOn = () =>
  z.looseObject(
    {
      size: text(40).nullable().exactOptional(),
      lengthM: lengthM().nullable().exactOptional(),
      colour: text(8).exactOptional(),
      from: reference().exactOptional(),
      to: reference().exactOptional(),
      fromForm: form(),
      toForm: form(),
    },
    says('what the step was done to'),
  )

export const tickSchema = z.looseObject(
  {
    ...entry,
    step: z.enum(BENCH_STEPS, says(BENCH_STEPS.join(', '))),
    done: flag(),
    on: workedOn().exactOptional(),
  },
  says('a tick: step, done, number, time and device'),
)

const fact = { ...entry, knew: instant().exactOptional() }

export const builtSchema = z.discriminatedUnion(
  'what',
  [
    z.looseObject({ ...fact, what: z.literal('size'), value: name(40).nullable() }),
    z.looseObject({ ...fact, what: z.literal('lengthM'), value: lengthM().nullable() }),
    z.looseObject({ ...fact, what: z.literal(['from', 'to']), value: reference().nullable() }),
    z.looseObject({ ...fact, what: z.literal('note'), value: name(BENCH_BOUNDS.note).nullable() }),
  ],
  says('size, lengthM, from, to or note'),
)

const JPEG = says(`base64 text of a JPEG of at most ${BENCH_BOUNDS.jpeg} letters`)

export const photoSchema = z.looseObject(
  {
    ...entry,
    photo: id(),
    jpeg: z
      .string(JPEG)
      .max(BENCH_BOUNDS.jpeg, JPEG)
      .regex(/^\/9j\/[A-Za-z0-9+/]*={0,2}$/, JPEG)
      .nullable(),
  },
  says('a photo: id, picture, number, time and device'),
)

export const torqueSchema = z.looseObject(
  {
    ...stamp,
    part: id(),
    terminal: name(64),
    newtonMetres: figure(...BENCH_BOUNDS.newtonMetres, 'N·m').nullable(),
  },
  says('a torque: part, terminal, newton metres, time and device'),
)

export const deviceSchema = z.looseObject(
  { device: id(), name: name(BENCH_BOUNDS.deviceName), at: instant() },
  says('a device: id, name and time'),
)

export const recordSchema = z.looseObject(
  {
    conductor: id(),
    ticks: z.array(tickSchema, says('a list of ticks')).default([]),
    built: z.array(builtSchema, says('a list of facts')).exactOptional(),
    photos: z.array(photoSchema, says('a list of photos')).exactOptional(),
  },
  says('what was recorded of one conductor'),
)

/** The whole, for the published schema; the reader takes it record by record. */
export const benchSchema = z.looseObject({
  conductors: z.array(recordSchema),
  torques: z.array(torqueSchema).exactOptional(),
  devices: z.array(deviceSchema).exactOptional(),
})
