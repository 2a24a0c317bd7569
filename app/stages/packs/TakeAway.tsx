import { FileText, X } from 'lucide-react'
import { useState } from 'react'
import { LostSigns } from './LostSigns'
import { makePack, stopMaking, useMaking } from './making'
import { takePdf, takePicture, takeSchedules } from './take'

/** How far the work is, and what can be taken away when it is done. */
export function TakeAway() {
  const work = useMaking((s) => s.work)
  const [busy, setBusy] = useState<string | null>(null)
  const [failed, setFailed] = useState<string | null>(null)
  const off = work.is !== 'made' || busy !== null
  const take = (what: string, act: () => Promise<void>) => () => {
    setBusy(what)
    setFailed(null)
    act()
      .catch((e: unknown) => setFailed(e instanceof Error ? e.message : String(e)))
      .finally(() => setBusy(null))
  }
  return (
    <div className="take-away">
      <Progress />
      <LostSigns />
      {failed !== null && (
        <p className="failure" role="alert">
          The file could not be made: {failed}
        </p>
      )}
      <button type="button" className="main" disabled={off} onClick={take('PDF', takePdf)}>
        <FileText size={16} aria-hidden /> {busy === 'PDF' ? 'Writing the PDF…' : 'PDF of the pack'}
      </button>
      <div className="row">
        <span>This sheet</span>
        <button
          type="button"
          className="plain"
          disabled={off}
          onClick={take('SVG', () => takePicture('svg'))}
        >
          SVG
        </button>
        <button
          type="button"
          className="plain"
          disabled={off}
          onClick={take('PNG', () => takePicture('png'))}
        >
          PNG
        </button>
      </div>
      <div className="row">
        <span>Schedules</span>
        <button
          type="button"
          className="plain"
          disabled={off}
          onClick={take('CSV', () => takeSchedules('csv'))}
        >
          CSV
        </button>
        <button
          type="button"
          className="plain"
          disabled={off}
          onClick={take('XLSX', () => takeSchedules('xlsx'))}
        >
          XLSX
        </button>
      </div>
      {busy !== null && (
        <button type="button" className="link" onClick={stopMaking}>
          <X size={14} aria-hidden /> Cancel
        </button>
      )}
    </div>
  )
}

function Progress() {
  const work = useMaking((s) => s.work)
  switch (work.is) {
    case 'making':
      return (
        <div className="progress" role="status">
          <progress max={work.of} value={work.done} aria-label="Sections made" />
          <span>
            {work.title}… {work.done} of {work.of}
          </span>
          <button type="button" className="link" onClick={stopMaking}>
            <X size={14} aria-hidden /> Cancel
          </button>
        </div>
      )
    case 'stopped':
      return (
        <div className="progress" role="status">
          <span>Stopped. Nothing is being made.</span>
          <button type="button" className="link" onClick={makePack}>
            Make the pack
          </button>
        </div>
      )
    case 'failed':
      return (
        <p className="failure" role="alert">
          The pack could not be made. {work.why}
        </p>
      )
    case 'made':
      return null
  }
}
