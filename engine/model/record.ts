import type { z } from 'zod'
import { foundWords, type Path, type ProblemList } from './problems'

export type RawRecord = Record<string, unknown>

export const isRecord = (data: unknown): data is RawRecord =>
  typeof data === 'object' && data !== null && !Array.isArray(data)

/**
 * Reads one record. Every fault is told. Keys that may be repaired are left out where they are at fault, and so take
 * their default; a fault anywhere else gives null.
 */
export function readRecord<S extends z.ZodType>(
  schema: S,
  data: unknown,
  path: Path,
  problems: ProblemList,
  mayRepair: (key: string) => boolean,
): z.output<S> | null {
  if (!isRecord(data)) {
    problems.add(path, 'a record', foundWords(data))
    return null
  }
  const first = schema.safeParse(data)
  if (first.success) return first.data
  const repaired = { ...data }
  for (const issue of first.error.issues) {
    const steps = issue.path.filter((step) => typeof step !== 'symbol')
    problems.add([...path, ...steps], issue.message, foundWords(at(data, steps)))
    if (typeof steps[0] === 'string' && mayRepair(steps[0])) delete repaired[steps[0]]
  }
  const second = schema.safeParse(repaired)
  return second.success ? second.data : null
}

function at(data: unknown, steps: Path): unknown {
  let now = data
  for (const step of steps) {
    if (typeof now !== 'object' || now === null) return undefined
    now = (now as Record<string | number, unknown>)[step]
  }
  return now
}
