import { makingOf } from '../../model/buying'
import type { Design } from '../../model/design'
import type { Article } from '../../tables/making'
import { figures, words } from './columns'
import { type Column, rounded, type ScheduleCell, type ScheduleRow } from './schedule'

/** Columns of a list of things to buy that hold what the workshop knows of each. */
export type ArticleKey = 'article' | 'each' | 'price' | 'weight'

export type ArticleCells = Readonly<Record<ArticleKey, ScheduleCell>>

/** What the workshop knows of the things of a list: looked up by row, summed up at its end. */
export interface Articles {
  /** The column for article numbers always; for prices and weights where any is stated. */
  readonly columns: readonly Column<ArticleKey>[]
  readonly of: (key: string, quantity: number) => ArticleCells
  /** What all rows come to, and how many of them have no figure; nothing where no price and no weight is stated. */
  readonly sums: (rows: readonly ScheduleRow<ArticleKey>[]) => readonly string[]
}

/** O(articles); each look-up is constant. */
export function articlesIn(design: Design): Articles {
  const articles = design.articles ?? []
  const { currency } = makingOf(design)
  const byKey = new Map(articles.map((a) => [a.key, a]))
  const priced = articles.some((a) => a.price !== null)
  const weighed = articles.some((a) => a.weightKg !== null)
  const money = (title: string) => (currency === '' ? title : `${title}, ${currency}`)
  return {
    columns: [
      words('article', 'Own article no.', 16),
      ...(priced
        ? [
            figures('each' as const, money('Price each'), '', 8, { decimals: 2 }),
            figures('price' as const, money('Price'), '', 8, { decimals: 2 }),
          ]
        : []),
      ...(weighed ? [figures('weight' as const, 'Weight', 'kg', 8, { decimals: 2 })] : []),
    ],
    of: (key, quantity) => {
      const article = byKey.get(key)
      return {
        article: article?.number ?? '',
        each: stated(article, 'price', 1, 2),
        price: stated(article, 'price', quantity, 2),
        weight: stated(article, 'weightKg', quantity, 3),
      }
    },
    sums: (rows) => [
      ...(priced
        ? [
            `Price of all lines: ${summed(rows, 'price', 2)}${currency === '' ? '' : ` ${currency}`}${gaps(rows, 'price')}. As the workshop stated it; taxes as it reckons them.`,
          ]
        : []),
      ...(weighed ? [`Weight of all lines: ${summed(rows, 'weight', 2)} kg${gaps(rows, 'weight')}.`] : []),
    ],
  }
}

const stated = (
  article: Article | undefined,
  what: 'price' | 'weightKg',
  quantity: number,
  decimals: number,
): ScheduleCell => {
  const one = article?.[what] ?? null
  return one === null ? '' : rounded(one * quantity, decimals)
}

type Rows = readonly ScheduleRow<ArticleKey>[]

const summed = (rows: Rows, key: ArticleKey, decimals: number): string =>
  rows
    .reduce((sum, { cells }) => sum + (typeof cells[key] === 'number' ? cells[key] : 0), 0)
    .toFixed(decimals)

function gaps(rows: Rows, key: ArticleKey): string {
  const without = rows.filter(({ cells }) => cells[key] === '').length
  if (without === 0) return ''
  return `; ${without} of ${rows.length} lines have no figure and are not counted`
}
