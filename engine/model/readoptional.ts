import type { Design, Part } from './design'
import type { ProblemList } from './problems'
import { readAccepted } from './readaccepted'
import { readBench } from './readbench'
import { readArticles, readMaking } from './readbuying'
import { readCommissioning } from './readcommissioning'
import { readHandover } from './readhandover'
import { readTexts, readZones } from './readonsheet'
import { readOwnConductors } from './readownconductors'
import { readRevisions } from './readrevisions'

type Reader<T> = (data: unknown, problems: ProblemList, parts: readonly Part[]) => T | undefined

/** Parts of a design that a file need not have, each with its reader; a reader gives undefined where there is none. */
const READERS = {
  ownConductors: readOwnConductors,
  accepted: readAccepted,
  zones: (data, problems, parts) => readZones(data, parts, problems),
  texts: readTexts,
  handover: readHandover,
  bench: readBench,
  commissioning: readCommissioning,
  making: readMaking,
  articles: readArticles,
  revisions: readRevisions,
} satisfies { readonly [K in keyof Design]?: Reader<Design[K]> }

export type OptionalKey = keyof typeof READERS

export const OPTIONAL_KEYS = Object.keys(READERS) as readonly OptionalKey[]

/** Every optional part that the file has. */
export function readOptional(
  file: Readonly<Record<string, unknown>>,
  parts: readonly Part[],
  problems: ProblemList,
): Partial<Pick<Design, OptionalKey>> {
  const found = OPTIONAL_KEYS.flatMap((key) => {
    const read: Reader<unknown> = READERS[key]
    const value = read(file[key], problems, parts)
    return value === undefined ? [] : [[key, value] as const]
  })
  return Object.fromEntries(found)
}
