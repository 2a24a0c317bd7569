import { OWN_RULES, type OwnRules } from '../tables/ownrules'
import type { Conductor, Design, Part, Settings } from './design'
import { FORMAT } from './design'
import type { KindLookup } from './kind'
import { parse } from './parse'
import { foundWords, type Problem, ProblemList } from './problems'
import { readConductors } from './readconductors'
import { OPTIONAL_KEYS, readOptional } from './readoptional'
import { readParts } from './readparts'
import { isRecord, readRecord } from './record'
import { ownRulesSchema, settingsSchema } from './schema'
import { type RawFile, upgrade } from './upgrade'

export type ReadResult =
  | { readonly design: Design; readonly problems: readonly Problem[] }
  | { readonly design?: undefined; readonly problems: readonly Problem[] }

/** A damaged setting of these stops the reading: a guess would change every check. */
const ESSENTIAL_SETTINGS = ['systemV', 'ruleSet']

/**
 * Text of a design file to a design, with everything that was wrong. A fault in the header gives no design; a fault
 * further in costs the record or the value that it stands in, and says so. Unknown kinds and unknown keys are kept.
 * Never throws. Linear in the text.
 */
export function readDesign(text: string, kindOf: KindLookup): ReadResult {
  const problems = new ProblemList()
  const file = header(parse(text, problems), problems)
  if (!file) return { problems: problems.all() }
  const essentials = readEssentials(file, problems)
  const lists = ['parts', 'conductors'].filter((key) => !Array.isArray(file[key]))
  for (const key of lists) problems.add([key], 'a list', foundWords(file[key]))
  if (!essentials || lists.length > 0) return { problems: problems.all() }

  const parts: readonly Part[] = readParts(file.parts as unknown[], kindOf, problems)
  const conductors: readonly Conductor[] = readConductors(
    file.conductors as unknown[],
    parts,
    kindOf,
    problems,
  )
  const optional = readOptional(file, parts, problems)
  const read = new Set(['loomwright', 'ownRules', ...OPTIONAL_KEYS])
  const rest = Object.fromEntries(Object.entries(file).filter(([key]) => !read.has(key)))
  const design: Design = { ...rest, ...essentials, parts, conductors, ...optional }
  return { design, problems: problems.all() }
}

/** Id and settings; null, with the problem told, where checks could not stand on them. */
function readEssentials(
  file: RawFile,
  problems: ProblemList,
): Pick<Design, 'id' | 'settings' | 'ownRules'> | null {
  const { id } = file
  const isId = typeof id === 'string' && id !== '' && id.length <= 64
  if (!isId) problems.add(['id'], 'text of 1 to 64 characters', foundWords(id))
  const settings = readRecord(
    settingsSchema,
    file.settings,
    ['settings'],
    problems,
    (key) => !ESSENTIAL_SETTINGS.includes(key),
  )
  if (!isId || !settings) return null
  const essentials = { id, settings: settings as Settings }
  if (file.ownRules === undefined && settings.ruleSet !== OWN_RULES) return essentials
  const ownRules = readRecord(ownRulesSchema, file.ownRules, ['ownRules'], problems, () => false)
  if (ownRules) return { ...essentials, ownRules: ownRules as OwnRules }
  return settings.ruleSet === OWN_RULES ? null : essentials
}

/** The file at today's format, or null where it is not a design file or from a later version. */
function header(data: unknown, problems: ProblemList): RawFile | null {
  if (data === undefined) return null
  if (!isRecord(data)) {
    problems.add([], 'a design file: one record', foundWords(data))
    return null
  }
  const format = data.loomwright
  if (typeof format !== 'number' || !Number.isInteger(format) || format < 1) {
    problems.add(
      ['loomwright'],
      `a format number, at most ${FORMAT}; is this a design file?`,
      foundWords(format),
    )
    return null
  }
  if (format > FORMAT) {
    problems.add(['loomwright'], `a format number up to ${FORMAT}`, `${format}: written by a later version`)
    return null
  }
  return upgrade(data, format)
}
