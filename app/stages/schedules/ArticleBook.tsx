import { BookOpen, Tags } from 'lucide-react'
import type { ScheduleRow } from '../../../engine'
import { doEdit, useOpen } from '../../store/open'
import { say } from '../../store/say'
import { learnt } from './articlebook'

interface Props {
  readonly rows: readonly ScheduleRow[]
  readonly entering: boolean
  readonly onEntering: (entering: boolean) => void
}

/** Entering article numbers, prices and weights, or fetching those that were typed in before. */
export function ArticleBook({ rows, entering, onEntering }: Props) {
  const articles = useOpen((s) => s.design.articles)
  const writing = useOpen((s) => s.hold === 'writing')
  const found = learnt(rows, articles)
  const fill = () => {
    if (doEdit('Articles from before', { do: 'articles', articles: found }))
      say(`${found.length} ${found.length === 1 ? 'row' : 'rows'} filled from earlier designs.`)
  }
  return (
    <>
      {found.length > 0 && (
        <button
          type="button"
          className="plain"
          disabled={!writing}
          onClick={fill}
          title="Article numbers, prices and weights that were typed in on this browser before"
        >
          <BookOpen size={16} aria-hidden /> Fill {found.length} from earlier designs
        </button>
      )}
      <button
        type="button"
        className={entering ? 'main' : 'plain'}
        aria-pressed={entering}
        disabled={!writing}
        onClick={() => onEntering(!entering)}
      >
        <Tags size={16} aria-hidden /> {entering ? 'Done with articles' : 'Articles and prices'}
      </button>
    </>
  )
}
