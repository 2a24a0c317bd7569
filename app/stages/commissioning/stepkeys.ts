import { useEffect } from 'react'
import type { StepRecord } from '../../../engine'
import { useView } from '../../store/view'
import { showSigning, takeStep } from './looking'

/** Arrows go from step to step while nobody is typing; page up and page down always do. */
export function useStepKeys(steps: readonly StepRecord[], at: number): void {
  useEffect(() => {
    const onKey = (e: KeyboardEvent) => {
      if (useView.getState().overlay || e.ctrlKey || e.metaKey || e.altKey) return
      const typing =
        (e.target as HTMLElement).closest('input, textarea, select, [role="menu"], dialog') !== null
      const by = e.key === 'PageDown' || (e.key === 'ArrowRight' && !typing) ? 1 : back(e.key, typing)
      if (by === 0) return
      e.preventDefault()
      const to = steps[at + by]
      if (to) takeStep(to.step.key)
      else if (by === 1) showSigning()
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [steps, at])
}

const back = (key: string, typing: boolean): -1 | 0 =>
  key === 'PageUp' || (key === 'ArrowLeft' && !typing) ? -1 : 0
