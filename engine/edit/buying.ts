import type { Design } from '../model/design'
import { ARTICLE_BOUNDS, type Article, MAKING_BOUNDS } from '../tables/making'
import { done } from './change'
import type { EditOf, EditResult } from './edit'
import { refuse } from './refuse'

/** How the workshop makes conductors up; null: as usual. */
export function applyMaking(design: Design, { making }: EditOf<'making'>): EditResult {
  const { making: before, ...rest } = design
  if (making === null) return done(before === undefined ? design : rest)
  for (const [key, [least, most]] of Object.entries(MAKING_BOUNDS)) {
    const value = making[key as keyof typeof MAKING_BOUNDS]
    if (!(value >= least && value <= most))
      return refuse('making', `This length lies between ${least} and ${most} m.`)
  }
  if (making.currency.length > 12) return refuse('making', 'A currency has at most 12 letters.')
  return done({ ...design, making })
}

/** Sets what is known of some articles; one of which nothing is known any more goes. */
export function applyArticles(design: Design, { articles }: EditOf<'articles'>): EditResult {
  for (const article of articles)
    for (const [key, [least, most]] of Object.entries(ARTICLE_BOUNDS)) {
      const value = article[key as keyof typeof ARTICLE_BOUNDS]
      if (value !== null && !(value >= least && value <= most))
        return refuse('article', `This figure of an article lies between ${least} and ${most}.`)
    }
  const { articles: before = [], ...rest } = design
  const byKey = new Map([...before, ...articles].map((a) => [a.key, a]))
  const known = [...byKey.values()].filter((a) => !isBlank(a))
  if (known.length === before.length && known.every((a, i) => a === before[i])) return done(design)
  return done(known.length === 0 ? rest : { ...rest, articles: known })
}

const isBlank = (a: Article): boolean => a.number === '' && a.price === null && a.weightKg === null
