import { type ReactNode, useState } from 'react'
import { type Answer, type WorstCase, whyCurrent } from '../../engine'
import { useOpen } from '../store/open'
import { Amount } from './Amount'

/** A worst-case current; behind "why?", the state of the devices that brings it about. */
export function Why({ answer, beside }: { answer: Answer<WorstCase>; beside?: string }) {
  const design = useOpen((s) => s.design)
  if ('notChecked' in answer) return <Amount answer={answer} />
  const head = (
    <>
      <Amount answer={{ value: answer.value.amps }} />
      {beside && <small> {beside}</small>}
    </>
  )
  return <WhyLines head={head} lines={whyCurrent(answer.value, design)} />
}

/** A figure with its derivation folded away behind "why?". */
export function WhyLines({ head, lines }: { head: ReactNode; lines: readonly string[] }) {
  const [open, setOpen] = useState(false)
  return (
    <div className="why">
      {head}
      {lines.length > 0 && (
        <button type="button" className="link" aria-expanded={open} onClick={() => setOpen(!open)}>
          why?
        </button>
      )}
      {open && (
        <ul className="witness">
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </div>
  )
}
