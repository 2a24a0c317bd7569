import type { Article, ScheduleRow } from '../../../engine'
import { readPreference, writePreference } from '../../files/preference'

const KEY = 'articles'

/** What this browser has learnt of things to buy, from every design in which it was typed in. */
export function articleBook(): ReadonlyMap<string, Article> {
  try {
    const rows: unknown = JSON.parse(readPreference(KEY) ?? '[]')
    return new Map(Array.isArray(rows) ? rows.filter(isArticle).map((a) => [a.key, a]) : [])
  } catch {
    return new Map()
  }
}

export function remember(articles: readonly Article[]): void {
  const book = new Map([...articleBook(), ...articles.map((a) => [a.key, a] as const)])
  writePreference(KEY, JSON.stringify([...book.values()].slice(-MOST)))
}

/** Rows of a list of which the design knows nothing, but this browser does. */
export function learnt(rows: readonly ScheduleRow[], known: readonly Article[] = []): readonly Article[] {
  const book = articleBook()
  const stated = new Set(known.map((a) => a.key))
  return rows.flatMap(({ key }) => {
    const article = stated.has(key) ? undefined : book.get(key)
    return article && (article.number !== '' || article.price !== null || article.weightKg !== null)
      ? [article]
      : []
  })
}

/** Newest rows that are kept; a workshop has a few hundred articles. */
const MOST = 2000

const isArticle = (row: unknown): row is Article => {
  if (typeof row !== 'object' || row === null) return false
  const { key, number, price, weightKg } = row as Partial<Record<keyof Article, unknown>>
  return typeof key === 'string' && typeof number === 'string' && isFigure(price) && isFigure(weightKg)
}

const isFigure = (value: unknown): boolean => value === null || typeof value === 'number'
