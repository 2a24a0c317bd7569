import { jsonFaultAt } from './jsonfault'
import type { Path, ProblemList } from './problems'

/** Beyond these a text is no file of ours, and reading it would only cost time. */
const MOST_CHARACTERS = 64_000_000
const DEEPEST = 64

/** In a longer text the place of a fault is not searched for: nobody mends it by hand. */
const MOST_SEARCHED = 4_000_000

/** Keys that could reach the prototype of a record when it is copied. */
const BARRED = ['__proto__', 'constructor', 'prototype']

/**
 * JSON text to plain data, or undefined with the problem told. Takes out barred keys and numbers beyond all bounds
 * ("1e999"), so that whatever is kept can be written back. Linear in the text; never throws.
 */
export function parse(text: string, problems: ProblemList, what = 'a design file'): unknown {
  const expected = `JSON text of ${what}`
  if (text.length > MOST_CHARACTERS) {
    problems.add([], 'a file of at most 64 million characters', `${text.length} characters`)
    return undefined
  }
  if (isTooDeep(text)) {
    problems.add([], `records nested at most ${DEEPEST} deep`, 'deeper nesting')
    return undefined
  }
  try {
    const data: unknown = JSON.parse(text)
    return clean(data, [], problems)
  } catch {
    if (text.trim() === '') problems.add([], expected, 'an empty file')
    else if (text.length > MOST_SEARCHED) problems.add([], expected, 'text that is not JSON')
    else problems.add([placeAt(text, jsonFaultAt(text))], expected, 'text that is not JSON from there on')
    return undefined
  }
}

/** Counts open brackets outside of strings. */
function isTooDeep(text: string): boolean {
  let depth = 0
  let quoted = false
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i)
    if (quoted) {
      if (c === BACKSLASH) i++
      else if (c === QUOTE) quoted = false
    } else if (c === QUOTE) quoted = true
    else if (c === OPEN_LIST || c === OPEN_RECORD) {
      if (++depth > DEEPEST) return true
    } else if (c === CLOSE_LIST || c === CLOSE_RECORD) depth--
  }
  return false
}

const [QUOTE, BACKSLASH] = [0x22, 0x5c]
const [OPEN_LIST, CLOSE_LIST, OPEN_RECORD, CLOSE_RECORD] = [0x5b, 0x5d, 0x7b, 0x7d]

/** Cleans data in place; it is fresh from the parser and nobody else's. */
function clean(data: unknown, path: Path, problems: ProblemList): unknown {
  if (typeof data === 'number' && !Number.isFinite(data)) {
    problems.add(path, 'a number that can be computed with', 'a number beyond all bounds')
    return null
  }
  if (typeof data !== 'object' || data === null) return data
  if (Array.isArray(data)) {
    for (let i = 0; i < data.length; i++) data[i] = clean(data[i], [...path, i], problems)
    return data
  }
  const record = data as Record<string, unknown>
  for (const key of BARRED)
    if (Object.hasOwn(record, key)) {
      delete record[key]
      problems.add([...path, key], 'a key that programs can use', `the barred key "${key}"`)
    }
  for (const key of Object.keys(record)) record[key] = clean(record[key], [...path, key], problems)
  return record
}

/** "line 12, column 5" */
function placeAt(text: string, position: number): string {
  let line = 1
  let start = 0
  for (let end = text.indexOf('\n'); end >= 0 && end < position; end = text.indexOf('\n', start)) {
    line += 1
    start = end + 1
  }
  return `line ${line}, column ${position - start + 1}`
}
