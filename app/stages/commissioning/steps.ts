import { useEffect } from 'react'
import { create } from 'zustand'
import { type Design, sameSteps, type TestStep } from '../../../engine'
import { useOpen } from '../../store/open'
import { stepsOf } from '../../worker/commissioning'

interface StepsState {
  /** The design that the steps are of. */
  readonly of: Design | null
  readonly steps: readonly TestStep[]
  /** Why they could not be worked out. */
  readonly failure: string | null
}

const useSteps = create<StepsState>(() => ({ of: null, steps: [], failure: null }))

let asked: Design | null = null

/** Asks for the steps of the open design, once for as long as nothing changes that they hang on. */
async function ask(design: Design): Promise<void> {
  if (asked && sameSteps(asked, design)) return
  asked = design
  try {
    const steps = await stepsOf(design)
    if (asked === design) useSteps.setState({ of: design, steps, failure: null })
  } catch (error) {
    if (asked !== design) return
    asked = null
    useSteps.setState({ failure: error instanceof Error ? error.message : String(error) })
  }
}

/** Steps of the open design; null while they are worked out, or why they could not be. */
export function useStepsOf(): {
  readonly steps: readonly TestStep[] | null
  readonly failure: string | null
} {
  const design = useOpen((s) => s.design)
  const { of, steps, failure } = useSteps()
  useEffect(() => void ask(design), [design])
  return { steps: of && sameSteps(of, design) ? steps : null, failure }
}
