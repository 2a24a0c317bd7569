import type { Article, Making } from '../tables/making'
import type { ProblemList } from './problems'
import { readKeyed } from './readkeyed'
import { readRecord } from './record'
import { articleSchema, makingSchema } from './schemabuying'

/** How conductors are made up; a faulty figure costs the whole, which is then as usual, and is told. undefined: none. */
export const readMaking = (data: unknown, problems: ProblemList): Making | undefined =>
  data === undefined
    ? undefined
    : ((readRecord(makingSchema, data, ['making'], problems, (key) => key === 'currency') ?? undefined) as
        | Making
        | undefined)

/** Own articles; a faulty price or weight costs only itself. undefined: none. */
export const readArticles = (data: unknown, problems: ProblemList): readonly Article[] | undefined =>
  readKeyed('articles', 'key', articleSchema, ['number', 'price', 'weightKg'], data, problems)
