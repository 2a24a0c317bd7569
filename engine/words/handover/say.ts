import type { Design, Part } from '../../model/design'
import type { HandoverWords } from './language'

/** How names and figures are put in one language. */
export interface Say {
  readonly w: HandoverWords
  /** "Water pump (M1)". */
  readonly part: (part: Part) => string
  /** "Water pump"; with its designation where another is called so too, by its kind where it has no name. */
  readonly short: (part: Part) => string
  /** "Water pump (M1, under bench)". */
  readonly at: (part: Part) => string
  /** With a capital, to begin a sentence. */
  readonly capital: (text: string) => string
  readonly list: (names: readonly string[]) => string
  /** About three digits in the manner of the language, with the unit: "12.4 A". */
  readonly figure: (value: number, unit: string) => string
  readonly date: (iso: string) => string
}

export function sayIn(w: HandoverWords, { parts }: Design): Say {
  const formats = [0, 1, 2].map(
    (digits) => new Intl.NumberFormat(w.locale, { maximumFractionDigits: digits, useGrouping: false }),
  )
  const calledSo = new Map<string, number>()
  for (const { name } of parts) calledSo.set(name.trim(), (calledSo.get(name.trim()) ?? 0) + 1)
  const nameless = ({ kind, designation }: Part): string => `${w.kinds[kind] ?? kind} ${designation}`
  const part = (p: Part): string =>
    p.name.trim() === '' ? nameless(p) : `${p.name.trim()} (${p.designation})`
  const short = (p: Part): string =>
    p.name.trim() === '' || (calledSo.get(p.name.trim()) ?? 0) > 1 ? part(p) : p.name.trim()
  return {
    w,
    part,
    short,
    at: (p) => {
      const place = p.location.trim()
      if (place === '') return part(p)
      return p.name.trim() === ''
        ? `${nameless(p)} (${place})`
        : `${p.name.trim()} (${p.designation}, ${place})`
    },
    capital: (text) => `${text.slice(0, 1).toLocaleUpperCase(w.locale)}${text.slice(1)}`,
    list: (names) => {
      const last = names.at(-1)
      if (names.length < 2 || last === undefined) return names.join('')
      return `${names.slice(0, -1).join(', ')} ${w.and} ${last}`
    },
    figure: (value, unit) => {
      const size = Math.abs(value)
      const text = formats[size >= 100 ? 0 : size >= 10 ? 1 : 2]!.format(value)
      return unit === '' ? text : `${text} ${unit}`
    },
    date: (iso) => {
      const time = Date.parse(`${iso}T00:00:00Z`)
      if (!/^\d{4}-\d{2}-\d{2}$/.test(iso) || !Number.isFinite(time)) return iso
      return new Intl.DateTimeFormat(w.locale, { dateStyle: 'long', timeZone: 'UTC' }).format(time)
    },
  }
}
