import { ListOrdered, PenLine, Printer } from 'lucide-react'
import type { CommissioningRecord } from '../../../engine'
import { setStage } from '../../store/view'
import { setBy, showSigning, toggleList, useLooking } from './looking'
import { Progress } from './StepList'

/** Who measures, how far the record is, and what can be done with it. */
export function CommissioningTop({ record }: { record: CommissioningRecord }) {
  const { by, list, signing } = useLooking()
  return (
    <header className="test-top">
      <button type="button" className="plain steps-button" aria-expanded={list} onClick={toggleList}>
        <ListOrdered size={20} aria-hidden /> Steps
      </button>
      <label className="by">
        <span>Measured by</span>
        <input value={by} maxLength={200} autoComplete="name" onChange={(e) => setBy(e.target.value)} />
      </label>
      <Progress counts={record.counts} whole />
      <button type="button" className="plain" aria-pressed={signing} onClick={showSigning}>
        <PenLine size={20} aria-hidden /> <span>Sign</span>
      </button>
      <button type="button" className="plain" onClick={() => setStage('packs')}>
        <Printer size={20} aria-hidden /> <span>Print</span>
      </button>
    </header>
  )
}
