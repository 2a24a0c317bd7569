import type { Part } from '../../model/design'
import type { HandoverWords } from './language'

/** How names and figures are put in one language. */
export interface Say {
  readonly w: HandoverWords
  /** "Water pump (M1)". */
  readonly part: (part: Part) => string
  /** "Water pump", or its kind and designation where it has no name. */
  readonly short: (part: Part) => string
  /** "Water pump (M1, under bench)". */
  readonly at: (part: Part) => string
  readonly list: (names: readonly string[]) => string
  /** About three digits in the manner of the language, with the unit: "12.4 A". */
  readonly figure: (value: number, unit: string) => string
  readonly date: (iso: string) => string
}

export function sayIn(w: HandoverWords): Say {
  const formats = [0, 1, 2].map(
    (digits) => new Intl.NumberFormat(w.locale, { maximumFractionDigits: digits, useGrouping: false }),
  )
  const short = ({ name, kind, designation }: Part): string =>
    name.trim() === '' ? `${w.kinds[kind] ?? kind} ${designation}` : name.trim()
  const part = (p: Part): string => (p.name.trim() === '' ? short(p) : `${short(p)} (${p.designation})`)
  return {
    w,
    part,
    short,
    at: (p) => {
      const place = p.location.trim()
      if (place === '') return part(p)
      return p.name.trim() === '' ? `${short(p)} (${place})` : `${short(p)} (${p.designation}, ${place})`
    },
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
