import { Maximize, Minus, Plus, TriangleAlert } from 'lucide-react'
import { useMemo } from 'react'
import { sortAccepted } from '../../engine'
import { takeOver } from '../files/session'
import { BuiltBadge } from '../stages/bench/BuiltBadge'
import { usePointer } from '../store/hand'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { useSaved } from '../store/saved'
import { tallyWords } from '../store/tally'
import { lookAtAll, setOverlay, useView, zoomBy } from '../store/view'

/** One line under the sheet: what the checks found, whether the work is kept, where the pointer is, zoom. */
export function StatusLine() {
  const findings = useLatest((s) => s.findings)
  const checked = useLatest((s) => s.checked)
  const failure = useLatest((s) => s.failure)
  const design = useOpen((s) => s.design)
  const drawing = useView((s) => s.stage === 'drawing')
  const { open, accepted } = useMemo(() => sortAccepted(design, findings), [design, findings])
  return (
    <footer className="status">
      <p role="status" aria-label="Checks" className="tally">
        {failure ? 'Checks broke off' : checked ? tallyWords(open, accepted.length) : 'Checking…'}
        {checked && checked !== design && ' …'}
      </p>
      <button type="button" className="link" onClick={() => setOverlay({ is: 'cautions' })}>
        <TriangleAlert size={14} aria-hidden /> Cautions
      </button>
      <BuiltBadge />
      <Kept />
      <span className="grow" />
      {drawing && <OnSheet />}
    </footer>
  )
}

/** Where the pointer is, and how near one looks. */
function OnSheet() {
  return (
    <>
      <Pointer />
      <fieldset aria-label="Zoom" className="zoom">
        <button type="button" className="icon" aria-label="Smaller" onClick={() => zoomBy(1 / 1.25)}>
          <Minus size={16} aria-hidden />
        </button>
        <button type="button" className="icon" aria-label="Larger" onClick={() => zoomBy(1.25)}>
          <Plus size={16} aria-hidden />
        </button>
        <button
          type="button"
          className="icon"
          aria-label="Whole drawing"
          title="Whole drawing (0)"
          onClick={lookAtAll}
        >
          <Maximize size={16} aria-hidden />
        </button>
      </fieldset>
    </>
  )
}

function Kept() {
  const hold = useOpen((s) => s.hold)
  const state = useSaved((s) => s.state)
  if (hold === 'reading') return <span className="kept urgent">Only looking: open in another tab</span>
  if (hold === 'free')
    return (
      <span className="kept urgent">
        The other tab has closed.{' '}
        <button type="button" className="link" onClick={() => void takeOver()}>
          Change it here
        </button>
      </span>
    )
  if (state === 'failed')
    return (
      <span className="kept urgent failed" role="alert">
        Could not be kept: save to a file
      </span>
    )
  return <span className="kept">{state === 'kept' ? 'Kept in this browser' : 'Keeping…'}</span>
}

function Pointer() {
  const pointer = usePointer((s) => s.at)
  if (!pointer) return null
  return (
    <span className="pointer" aria-hidden>
      {Math.round(pointer[0])} · {Math.round(pointer[1])} mm
    </span>
  )
}
