import type { Sheet } from '../sheet'

/** A line of the outline of a PDF, and of the contents page. */
export interface Bookmark {
  readonly title: string
  /** Index of the page that it leads to. */
  readonly page: number
  readonly under: readonly Bookmark[]
}

/**
 * A section with its sheets, from page `first` on. Sheets in a row that are called alike are one line; where all of a
 * section are, they go by their number.
 */
export function sectionBookmark(title: string, sheets: readonly Sheet[], first: number): Bookmark {
  const names = sheets.map((s) => s.title.replace(/^\d+ /, ''))
  const alike = new Set(names).size === 1
  const under = names.flatMap((name, i) =>
    alike || name !== names[i - 1]
      ? [{ title: alike ? `Sheet ${i + 1}` : name, page: first + i, under: [] }]
      : [],
  )
  return { title, page: first, under: sheets.length > 1 ? under : [] }
}
