import type { Sheet } from '../sheet'

/** A line of the outline of a PDF, and of the contents page. */
export interface Bookmark {
  readonly title: string
  /** Index of the page that it leads to. */
  readonly page: number
  readonly under: readonly Bookmark[]
}

/** A section with its sheets, from page `first` on. Sheets that are called alike are told apart by their number. */
export function sectionBookmark(title: string, sheets: readonly Sheet[], first: number): Bookmark {
  const names = sheets.map((s) => s.title.replace(/^\d+ /, ''))
  const alike = new Set(names).size === 1
  const named = (name: string, i: number): string => {
    if (alike) return `Sheet ${i + 1}`
    const same = names.flatMap((n, k) => (n === name ? [k] : []))
    return same.length === 1 ? name : `${name}, ${same.indexOf(i) + 1} of ${same.length}`
  }
  const under = names.map((name, i) => ({ title: named(name, i), page: first + i, under: [] }))
  return { title, page: first, under: sheets.length > 1 ? under : [] }
}
