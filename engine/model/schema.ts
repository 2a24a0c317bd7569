import { z } from 'zod'
import { isColour } from '../tables/colours'
import { OWN_BOUNDS } from '../tables/ownrules'
import { OWN_CONDUCTOR_BOUNDS, OWN_SIZE_KEY } from '../tables/ownsizes'
import { benchSchema } from './benchschema'
import { testRecordSchema } from './commissioningschema'
import { RUN_LIMITS } from './runlimits'
import { articleSchema, makingSchema } from './schemabuying'
import {
  coordinate,
  corners,
  FURTHEST_MM,
  figure,
  flag,
  id,
  MOST_NOTES,
  name,
  noteNumber,
  point,
  reference,
  says,
  text,
} from './schemaforms'
import { handoverSchema } from './schemahandover'
import { revisionSchema } from './schemarevision'

const A_LENGTH = `a length over 0 and up to ${RUN_LIMITS.longestM} m, or null`
const A_COUNT = `a whole number from 1 to ${RUN_LIMITS.mostBunched}`

const ownFigure = () =>
  z.looseObject({ amps: figure(0, 1e5, 'A'), reason: name(500) }, says('amps with a written reason, or null'))

const own = ([least, most]: readonly [number, number], unit: string) => figure(least, most, unit).optional()

export const ownRulesSchema = z.looseObject(
  {
    basedOn: name(64),
    title: name(200),
    insulationC: own(OWN_BOUNDS.insulationC, '°C'),
    devicePercent: own(OWN_BOUNDS.devicePercent, '%'),
    nearSourceM: own(OWN_BOUNDS.nearSourceM, 'm'),
    nearSourceSheathedM: own(OWN_BOUNDS.nearSourceSheathedM, 'm'),
    dropCriticalPercent: own(OWN_BOUNDS.dropCriticalPercent, '%'),
    dropGeneralPercent: own(OWN_BOUNDS.dropGeneralPercent, '%'),
    conduitPercent: own(OWN_BOUNDS.conduitPercent, '%'),
    thermalPercent: own(OWN_BOUNDS.thermalPercent, '%'),
  },
  says('own rules: what they are based on, a title, and figures'),
)

const ofOwn = ([least, most]: readonly [number, number], unit: string) =>
  figure(least, most, unit).nullable().default(null)

export const ownConductorSchema = z.looseObject(
  {
    key: z.string(says('a key such as own:1')).regex(OWN_SIZE_KEY, says('a key such as own:1')),
    name: name(60),
    sectionMm2: figure(...OWN_CONDUCTOR_BOUNDS.sectionMm2, 'mm²'),
    ohmsPerKm: ofOwn(OWN_CONDUCTOR_BOUNDS.ohmsPerKm, 'Ω/km'),
    amps: ofOwn(OWN_CONDUCTOR_BOUNDS.amps, 'A'),
    insulationC: ofOwn(OWN_CONDUCTOR_BOUNDS.insulationC, '°C'),
    offered: flag().default(false),
  },
  says('an own conductor: key, name and cross-section'),
)

export const settingsSchema = z.looseObject({
  name: text(200).default(''),
  customer: text(200).default(''),
  vehicle: text(200).default(''),
  designer: text(200).default(''),
  installer: text(200).exactOptional(),
  contact: text(2000).exactOptional(),
  revision: text(40).default(''),
  date: text(40).default(''),
  systemV: z.union([z.literal(12), z.literal(24), z.literal(48)], says('12, 24 or 48')),
  ruleSet: name(64),
  ambientC: figure(-60, 100, '°C').default(30),
  coldestC: figure(-60, 100, '°C').default(0),
  notes: text(20000).default(''),
})

export const partSchema = z.looseObject({
  id: id(),
  kind: name(64),
  designation: name(40),
  name: text(200).default(''),
  location: text(200).default(''),
  x: coordinate().default(0),
  y: coordinate().default(0),
  at: z
    .looseObject(
      { 'both-poles': point().exactOptional(), data: point().exactOptional() },
      says('places by view: both-poles, data'),
    )
    .exactOptional(),
  turn: z
    .union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)], says('0, 90, 180 or 270'))
    .default(0),
  mirrored: flag().default(false),
  values: z.record(z.string(), z.unknown(), says('a record of values by field')).default({}),
  notes: z
    .array(noteNumber(), says('a list of note numbers'))
    .max(MOST_NOTES, says(`at most ${MOST_NOTES} note numbers`))
    .exactOptional(),
})

export const conductorSchema = z.looseObject({
  id: id(),
  number: name(40),
  from: reference(),
  to: reference(),
  returnOf: name(64).nullable().default(null),
  size: name(40).nullable().default(null),
  locked: flag().exactOptional(),
  lengthM: z
    .number(says(A_LENGTH))
    .gt(0, says(A_LENGTH))
    .max(RUN_LIMITS.longestM, says(A_LENGTH))
    .nullable()
    .default(null),
  colour: z
    .string(says('IEC 60757 colour letters, such as RD'))
    .refine(isColour, says('IEC 60757 colour letters, such as RD'))
    .default('BK'),
  insulationC: figure(...RUN_LIMITS.insulationC, '°C')
    .nullable()
    .default(null),
  sheathed: flag().default(false),
  surround: z.enum(['free', 'conduit', 'insulation'], says('free, conduit or insulation')).exactOptional(),
  engineSpace: flag().default(false),
  bunched: z.int(says(A_COUNT)).min(1, says(A_COUNT)).max(RUN_LIMITS.mostBunched, says(A_COUNT)).default(1),
  designCurrent: ownFigure().nullable().default(null),
  remark: text(2000).default(''),
  path: corners().default([]),
  pathIn: z
    .looseObject(
      { 'both-poles': corners().exactOptional(), data: corners().exactOptional() },
      says('lists of points by view: both-poles, data'),
    )
    .exactOptional(),
})

export const acceptedSchema = z.looseObject(
  {
    key: name(20000),
    level: z.enum(['danger', 'warning', 'note', 'not-checked'], says('danger, warning, note or not-checked')),
    actual: z.union([z.number(), z.literal('unlimited')], says('a number or unlimited')).exactOptional(),
    reason: name(2000).refine((reason) => reason.trim() !== '', says('a written reason')),
    by: text(200).exactOptional(),
    date: text(40).exactOptional(),
  },
  says('an accepted finding: key, level and reason'),
)

const extent = () => figure(2.5, FURTHEST_MM, 'mm')

export const zoneSchema = z.looseObject(
  {
    id: id(),
    name: name(200),
    parts: z.array(name(64), says('a list of part ids')).default([]),
    x: coordinate(),
    y: coordinate(),
    w: extent(),
    h: extent(),
  },
  says('an outline: id, name, parts and a rectangle'),
)

export const sheetTextSchema = z.looseObject(
  {
    id: id(),
    text: name(2000),
    view: z
      .enum(['all', 'single-line', 'both-poles', 'data'], says('all, single-line, both-poles or data'))
      .default('all'),
    x: coordinate(),
    y: coordinate(),
  },
  says('a text on the sheet: id, text and place'),
)

/**
 * The shape of a design file. Written with zod, the one run-time package of the engine, because a single
 * declaration then gives the check, the place of each fault and the published JSON Schema; by hand these would be
 * three texts to keep in step. Keys that are not declared are kept, so that a file from elsewhere loses nothing.
 *
 * The message of each check says what was expected, in words for a person; `found` is added by the reader.
 *
 * This is the whole file; the reader takes it record by record, so that one fault costs one record.
 */
export const fileSchema = z
  .looseObject({
    loomwright: z.literal(1),
    id: name(64),
    settings: settingsSchema,
    ownRules: ownRulesSchema.optional(),
    ownConductors: z.array(ownConductorSchema).exactOptional(),
    parts: z.array(partSchema),
    conductors: z.array(conductorSchema),
    accepted: z.array(acceptedSchema).exactOptional(),
    zones: z.array(zoneSchema).exactOptional(),
    texts: z.array(sheetTextSchema).exactOptional(),
    handover: handoverSchema.exactOptional(),
    commissioning: z.array(testRecordSchema).exactOptional(),
    bench: benchSchema.exactOptional(),
    making: makingSchema.exactOptional(),
    articles: z.array(articleSchema).exactOptional(),
    revisions: z.array(revisionSchema).exactOptional(),
  })
  .describe(
    'A wiring design of an extra-low-voltage DC system. Lengths of the drawing in mm, of conductors in m.',
  )
