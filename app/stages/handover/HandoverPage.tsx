import '../../theme/book.css'
import '../../theme/handover.css'
import { ArrowUpToLine, PencilLine, Printer, Smartphone } from 'lucide-react'
import { useMemo, useRef, useState } from 'react'
import { handoverBook } from '../../../engine'
import { useOpen } from '../../store/open'
import { setStage } from '../../store/view'
import { keepChoice, keptChoice } from '../packs/choice'
import { BookView } from './BookView'
import { EditSide } from './EditSide'

/** What the customer keeps: the installer's words beside the pack as it reads, on a page or on a telephone. */
export default function HandoverPage() {
  const design = useOpen((s) => s.design)
  const book = useMemo(() => handoverBook(design), [design])
  const [narrow, setNarrow] = useState(false)
  const [editing, setEditing] = useState(false)
  const paper = useRef<HTMLDivElement>(null)
  return (
    <main className={`page handover${editing ? ' editing' : ''}`}>
      <EditSide design={design} />
      <section className="reading" aria-label="The pack as it reads">
        <div className="bar">
          <button
            type="button"
            className="plain edit"
            aria-pressed={editing}
            onClick={() => setEditing((on) => !on)}
          >
            <PencilLine size={16} aria-hidden /> {editing ? 'Read it' : 'Your words'}
          </button>
          <button
            type="button"
            className="plain phone"
            aria-pressed={narrow}
            onClick={() => setNarrow((on) => !on)}
          >
            <Smartphone size={16} aria-hidden /> As on a telephone
          </button>
          <button type="button" className="plain front" onClick={() => paper.current?.scrollTo({ top: 0 })}>
            <ArrowUpToLine size={16} aria-hidden /> Front page
          </button>
          <button
            type="button"
            className="plain"
            onClick={() => {
              keepChoice({ ...keptChoice(), reader: 'customer' })
              setStage('packs')
            }}
          >
            <Printer size={16} aria-hidden /> On paper
          </button>
        </div>
        <div className={`paper${narrow ? ' narrow' : ''}`} ref={paper}>
          <BookView book={book} />
        </div>
      </section>
    </main>
  )
}
