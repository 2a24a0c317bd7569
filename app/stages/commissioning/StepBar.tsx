import { ChevronLeft, ChevronRight } from 'lucide-react'
import type { StepRecord } from '../../../engine'
import { showSigning, takeStep } from './looking'

interface Props {
  readonly steps: readonly StepRecord[]
  readonly at: number
}

/** One step back and one on; behind the last one the signatures. */
export function StepBar({ steps, at }: Props) {
  const before = steps[at - 1]
  const after = steps[at + 1]
  return (
    <nav className="test-bar" aria-label="Through the steps">
      <button
        type="button"
        className="plain"
        disabled={!before}
        onClick={() => before && takeStep(before.step.key)}
      >
        <ChevronLeft size={24} aria-hidden /> Step before
      </button>
      <span className="hint">
        <kbd>←</kbd> <kbd>→</kbd> from step to step, <kbd>Enter</kbd> enters
      </span>
      {at < steps.length && (
        <button
          type="button"
          className="main test-next"
          onClick={() => (after ? takeStep(after.step.key) : showSigning())}
        >
          {after ? 'Next step' : 'On to the signatures'} <ChevronRight size={24} aria-hidden />
        </button>
      )}
    </nav>
  )
}
