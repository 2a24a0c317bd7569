import { ARTICLE_BOUNDS, type Article, makingOf, type ScheduleRow } from '../../../engine'
import { NumberInput } from '../../panels/NumberInput'
import { TextInput } from '../../panels/TextInput'
import { doEdit, useOpen } from '../../store/open'
import { remember } from './articlebook'

export function ArticleHeads() {
  const currency = useOpen((s) => makingOf(s.design).currency)
  return (
    <>
      <th scope="col">Own article no.</th>
      <th scope="col">Price of one{currency && `, ${currency}`}</th>
      <th scope="col">Weight of one</th>
    </>
  )
}

/** What the workshop knows of one row, to be typed in; kept in the design, and in this browser for the next one. */
export function ArticleCells({ row }: { row: ScheduleRow }) {
  const writing = useOpen((s) => s.hold === 'writing')
  const known = useOpen((s) => s.design.articles?.find((a) => a.key === row.key))
  const article: Article = known ?? { key: row.key, number: '', price: null, weightKg: null }
  const what = String(row.cells.what ?? row.name)
  const set = (change: Partial<Article>) => {
    const next = { ...article, ...change }
    if (doEdit(`Article of ${what}`, { do: 'articles', articles: [next] })) remember([next])
  }
  return (
    <>
      <td className="entry">
        <TextInput
          label={`Own article number of ${what}`}
          value={article.number}
          disabled={!writing}
          onChange={(number) => set({ number: number.slice(0, 80) })}
        />
      </td>
      {FIGURES.map(([key, label, unit]) => (
        <td key={key} className="entry">
          <NumberInput
            label={`${label} of one ${what}`}
            unit={unit}
            value={article[key]}
            min={ARTICLE_BOUNDS[key][0]}
            max={ARTICLE_BOUNDS[key][1]}
            disabled={!writing}
            onChange={(value) => set({ [key]: value })}
          />
        </td>
      ))}
    </>
  )
}

const FIGURES = [
  ['price', 'Price', ''],
  ['weightKg', 'Weight', 'kg'],
] as const
