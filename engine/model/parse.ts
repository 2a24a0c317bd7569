import type { Path, ProblemList } from './problems'

/** Beyond these a text is no file of ours, and reading it would only cost time. */
const MOST_CHARACTERS = 64_000_000
const DEEPEST = 64

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
    const data: unknown = JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text)
    return clean(data, [], problems)
  } catch (error) {
    const place = placeOf(text, error)
    if (text.trim() === '') problems.add([], expected, 'an empty file')
    else problems.add(place === null ? [] : [place], expected, 'text that is not JSON from there on')
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

/** "line 12, column 5", from what the parser's message gives: it differs between browsers. Null where it says nothing. */
function placeOf(text: string, error: unknown): string | null {
  const message = String(error)
  const stated = /line (\d+) column (\d+)/.exec(message)
  if (stated) return `line ${stated[1]}, column ${stated[2]}`
  const position = /position (\d+)/.exec(message)?.[1] ?? (/end of/i.test(message) ? text.length : null)
  if (position === null) return null
  const before = text.slice(0, Number(position)).split('\n')
  return `line ${before.length}, column ${before[before.length - 1]!.length + 1}`
}
