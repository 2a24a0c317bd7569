import type { Expected, NotExpected } from '../../calc/commissioning/step'
import type { Design } from '../../model/design'
import { conductorName, listed, partName } from '../names'

/** A measured or expected figure: "13.4 V", "−20 A". */
export const amountWords = (value: number, unit: string): string =>
  `${String(value).replace('-', '−')}${unit === '' ? '' : ` ${unit}`}`

/** Bounds as a person reads them: "12.7 to 14 V", "at least 10 kΩ". */
export function boundsWords(least: number | null, most: number | null, unit: string): string {
  const of = (v: number): string => amountWords(v, '')
  if (least !== null && most !== null) {
    if (least === -most) return `0 ± ${amountWords(most, unit)}`
    return `${of(least)} to ${amountWords(most, unit)}`
  }
  if (least !== null) return `at least ${amountWords(least, unit)}`
  return most === null ? '' : `at most ${amountWords(most, unit)}`
}

type Figure = Extract<Expected, { is: 'figure' }>

/** "calculated 13.4 V"; nothing where there is no figure. */
export const usualWords = ({ usual, unit }: Figure): string =>
  usual === null || usual === 0 ? '' : `calculated ${amountWords(usual, unit)}`

/** What a reading is held against: "the clamp meter + 0.7 A, within 3 % and 0.2 A". */
export function againstWords({ against, unit }: Figure): string {
  if (!against) return ''
  const { times, plus, share, amount, reading } = against
  const other = reading === 'posts' ? 'the battery posts' : 'the clamp meter'
  const shift = plus === 0 ? '' : ` ${plus < 0 ? '−' : '+'} ${amountWords(Math.abs(plus), unit)}`
  const within = share === 0 ? '' : `${amountWords(share * 100, '%')} and `
  return `${times === -1 ? 'minus ' : ''}${other}${shift}, within ${within}${amountWords(amount, unit)}`
}

/** "because …": why nothing is known to expect. */
export function notExpectedWords(
  { because, parts, conductors }: Extract<Expected, { is: 'not-known' }>,
  design: Design,
): string {
  const who = listed([
    ...parts.map((id) => partName(design, id)),
    ...conductors.map((id) => conductorName(design, id)),
  ])
  return `because ${REASONS[because](who === '' ? 'the design' : who)}.`
}

const REASONS: Readonly<Record<NotExpected, (who: string) => string>> = {
  'no-draw': (who) => `neither current nor power is typed for ${who}`,
  'no-supply': (who) => `as drawn, nothing feeds ${who} in this state`,
  'no-operating-point': (who) => `no steady state was found; look at ${who}`,
  'missing-run': (who) => `size or length is not typed for ${who}`,
  'no-internal-resistance': (who) => `no internal resistance is typed for ${who}`,
  'no-threshold': (who) => `the voltage at which ${who} switches is not typed`,
  'no-voltage': (who) => `the voltage of ${who} is not typed`,
  'no-array': (who) => `no array is drawn at the input of ${who}`,
  'no-alert': () => 'the design has no cut-out with a typed voltage that the alert could stay above',
  'no-lead': (who) => `no data lead is drawn to ${who}`,
  'joined-as-drawn': (who) => `as drawn, ${who} are joined by another way`,
  'untrue-as-drawn': (who) => `as drawn, ${who} does not show the truth in this state; see the findings`,
  'not-joined': (who) => `as drawn, ${who} is joined to no battery`,
}
