import type { Accepted } from './design'
import { foundWords, type ProblemList } from './problems'
import { readRecord } from './record'
import { acceptedSchema } from './schema'

/**
 * The list of accepted findings; undefined: the file has none. A faulty record is left out and told: its finding then
 * stands open, which is the careful reading. So is a second record for the same finding.
 */
export function readAccepted(data: unknown, problems: ProblemList): readonly Accepted[] | undefined {
  if (data === undefined) return undefined
  if (!Array.isArray(data)) {
    problems.add(['accepted'], 'a list', foundWords(data))
    return undefined
  }
  const byKey = new Map<string, Accepted>()
  data.forEach((raw: unknown, i) => {
    const record = readRecord(acceptedSchema, raw, ['accepted', i], problems, (key) => OPTIONAL.includes(key))
    if (!record) return
    if (byKey.has(record.key))
      problems.add(['accepted', i, 'key'], 'a finding that is not accepted already', foundWords(record.key))
    else byKey.set(record.key, record as Accepted)
  })
  return [...byKey.values()]
}

const OPTIONAL = ['by', 'date']
