import { FileText } from 'lucide-react'
import { useState } from 'react'
import type { PaperSize, SchematicOptions } from '../../engine'
import { download } from '../files/disk'
import { fileName } from '../files/session'
import { useOpen } from '../store/open'
import { say } from '../store/say'
import { printPdf } from '../worker/print'
import { Sheet } from './Sheet'

type View = NonNullable<SchematicOptions['view']>

/** Chooses paper and makes the schematic as a PDF. */
export function Print({ onClose }: { onClose: () => void }) {
  const design = useOpen((s) => s.design)
  const [paper, setPaper] = useState<PaperSize>('A3')
  const [view, setView] = useState<View>('single-line')
  const [black, setBlack] = useState(false)
  const [state, setState] = useState<'ready' | 'making' | { readonly failed: string }>('ready')

  const make = async () => {
    setState('making')
    try {
      const bytes = await printPdf({
        design,
        options: { paper, view },
        colouring: black ? 'black' : 'colour',
      })
      const name = fileName(design).replace(/\.json$/, '.pdf')
      download(name, new Blob([bytes as BlobPart], { type: 'application/pdf' }))
      say(`Schematic written to ${name}.`)
      onClose()
    } catch (e) {
      setState({ failed: e instanceof Error ? e.message : String(e) })
    }
  }
  return (
    <Sheet
      title="Schematic on paper"
      about="Every conductor and device labelled, with legend, findings, rule set and cautions. The design file travels inside the PDF."
      narrow
      onClose={onClose}
    >
      <div className="fields">
        <label className="field" htmlFor="print-paper">
          <span className="label">Paper, landscape</span>
          <select id="print-paper" value={paper} onChange={(e) => setPaper(e.target.value as PaperSize)}>
            <option>A3</option>
            <option>A4</option>
            <option>A2</option>
          </select>
        </label>
        <label className="field" htmlFor="print-view">
          <span className="label">Drawn as</span>
          <select id="print-view" value={view} onChange={(e) => setView(e.target.value as View)}>
            <option value="single-line">Single-line</option>
            <option value="both-poles">Both poles</option>
          </select>
        </label>
        <label className="field" htmlFor="print-black">
          <span className="label">Black ink only</span>
          <input
            id="print-black"
            type="checkbox"
            checked={black}
            onChange={(e) => setBlack(e.target.checked)}
          />
        </label>
      </div>
      {typeof state === 'object' && (
        <p className="failure" role="alert">
          The PDF could not be made: {state.failed}
        </p>
      )}
      <div className="buttons">
        <button type="button" className="main" disabled={state === 'making'} onClick={() => void make()}>
          <FileText size={16} aria-hidden /> {state === 'making' ? 'Drawing the sheets…' : 'Make the PDF'}
        </button>
      </div>
    </Sheet>
  )
}
