import { foundWords, type Path, type ProblemList } from '../model/problems'
import { isRecord, type RawRecord } from '../model/record'

/** What a value must be: a test, and the words for it. */
export interface Wanted {
  readonly words: string
  readonly fits: (value: unknown) => boolean
  readonly optional?: boolean
}

/** Larger figures are no ohms, amps or volts of anything. */
const MOST = 1e12
const LONGEST_NAME = 200

const isNumber = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value) && Math.abs(value) <= MOST

export const name: Wanted = {
  words: `text of 1 to ${LONGEST_NAME} characters`,
  fits: (v) => typeof v === 'string' && v.length > 0 && v.length <= LONGEST_NAME,
}
export const figure: Wanted = { words: 'a number from -1e12 to 1e12', fits: isNumber }
export const above0: Wanted = { words: 'a number above 0, up to 1e12', fits: (v) => isNumber(v) && v > 0 }
export const between = (low: number, high: number): Wanted => ({
  words: `a number from ${low} to ${high}`,
  fits: (v) => isNumber(v) && v >= low && v <= high,
})
export const share: Wanted = {
  words: 'a number above 0, up to 1',
  fits: (v) => isNumber(v) && v > 0 && v <= 1,
}
export const atMost0: Wanted = {
  words: 'a number from -1e12 to 0, or "unlimited"',
  fits: (v) => v === 'unlimited' || (isNumber(v) && v <= 0),
}
export const atLeast0: Wanted = {
  words: 'a number from 0 to 1e12, or "unlimited"',
  fits: (v) => v === 'unlimited' || (isNumber(v) && v >= 0),
}
export const oneOf = (...words: string[]): Wanted => ({
  words: `one of ${words.join(', ')}`,
  fits: (v) => words.includes(v as string),
})
export const names: Wanted = {
  words: 'a list of names',
  fits: (v) => Array.isArray(v) && v.every((x) => name.fits(x)),
}
export const maybe = (wanted: Wanted): Wanted => ({ ...wanted, optional: true })

/** Does a record have just these fields, each as wanted? Every fault is told. */
export function fits(
  fields: ReadonlyMap<string, Wanted>,
  data: unknown,
  path: Path,
  problems: ProblemList,
): data is RawRecord {
  if (!isRecord(data)) {
    problems.add(path, 'a record', foundWords(data))
    return false
  }
  let good = true
  const fault = (key: string, expected: string, found: string): void => {
    problems.add([...path, key], expected, found)
    good = false
  }
  for (const [key, wanted] of fields) {
    const value = Object.hasOwn(data, key) ? data[key] : undefined
    if (value === undefined && wanted.optional) continue
    if (!wanted.fits(value)) fault(key, wanted.words, foundWords(value))
  }
  for (const key of Object.keys(data))
    if (!fields.has(key)) fault(key, `no key but ${[...fields.keys()].join(', ')}`, 'another key')
  return good
}
