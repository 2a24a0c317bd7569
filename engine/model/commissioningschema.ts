import { z } from 'zod'
import { figure, id, name, says, text } from './schemaforms'

/** Date and time as an ISO 8601 text that a calendar has. */
const moment = () => {
  const words = says('a date and time such as 2026-03-04T10:30:00Z')
  return z
    .string(words)
    .max(40, words)
    .refine((at) => /^\d{4}-\d\d-\d\dT/.test(at) && !Number.isNaN(Date.parse(at)), words)
}

const bound = () => figure(-1e9, 1e9, '').exactOptional()

const expectedSchema = z.looseObject(
  { least: bound(), most: bound(), seen: text(2000).exactOptional() },
  says('what was expected: least, most or seen; or null'),
)

const entrySchema = z.looseObject({
  is: z.literal('entry', says('entry or signing')),
  id: id(),
  step: name(400),
  reading: name(400),
  of: text(400).default(''),
  found: z.union([figure(-1e9, 1e9, ''), z.boolean(), z.null()], says('a figure, true, false or null')),
  unit: text(8).default(''),
  expected: expectedSchema.nullable(),
  judged: z.enum(['good', 'bad'], says('good or bad')).exactOptional(),
  remark: text(2000).default(''),
  by: text(200).default(''),
  at: moment(),
})

const count = () => {
  const words = says('a whole number from 0')
  return z.int(words).min(0, words).max(1e6, words)
}

const signingSchema = z.looseObject({
  is: z.literal('signing', says('entry or signing')),
  id: id(),
  name: name(200).refine((who) => who.trim() !== '', says('a name')),
  remark: text(2000).default(''),
  at: moment(),
  covers: z.array(name(64), says('a list of ids of entries')),
  passed: count(),
  failed: count(),
  outOfDate: count(),
  notDone: count(),
})

/** One line of the commissioning record. */
export const testRecordSchema = z.discriminatedUnion(
  'is',
  [entrySchema, signingSchema],
  says('an entry or a signing, told by "is"'),
)
