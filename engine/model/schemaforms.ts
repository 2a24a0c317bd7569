import { z } from 'zod'

/** What fields of a design file look like; each message says what was expected, in words for a person. */
export const says = (expected: string) => ({ error: expected })

export const FURTHEST_MM = 20000

export const text = (most: number) => {
  const words = says(`text of at most ${most} characters`)
  return z.string(words).max(most, words)
}

export const name = (most: number) => {
  const words = says(`text of 1 to ${most} characters`)
  return z.string(words).min(1, words).max(most, words)
}

/** Ids of parts and conductors: no slash, which parts them from what is theirs in names such as "part/terminal". */
export const id = () => {
  const words = says('an id of 1 to 64 characters without a slash')
  return z
    .string(words)
    .min(1, words)
    .max(64, words)
    .regex(/^[^/]*$/, words)
}

export const figure = (least: number, most: number, unit: string) => {
  const words = says(`a number from ${least} to ${most} ${unit}`.trim())
  return z.number(words).min(least, words).max(most, words)
}

export const MOST_NOTES = 99

export const noteNumber = () => {
  const words = says(`a whole number from 1 to ${MOST_NOTES}`)
  return z.int(words).min(1, words).max(MOST_NOTES, words)
}

export const flag = () => z.boolean(says('true or false'))

export const coordinate = () => figure(-FURTHEST_MM, FURTHEST_MM, 'mm')

export const reference = () => {
  const words = says('a part and a terminal')
  return z.looseObject({ part: name(64), terminal: name(64) }, words)
}

export const point = () => z.looseObject({ x: coordinate(), y: coordinate() }, says('a point with x and y'))

export const corners = () => z.array(point(), says('a list of points')).max(1000, says('at most 1000 points'))
