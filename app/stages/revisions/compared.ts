import { useEffect, useState } from 'react'
import type { Design, SceneView } from '../../../engine'
import { compareStates } from '../../worker/compare'
import type { Compared } from '../../worker/compare.worker'

export type Outcome =
  | { readonly is: 'working' }
  | { readonly is: 'done'; readonly compared: Compared }
  | { readonly is: 'failed'; readonly why: string }

const WORKING: Outcome = { is: 'working' }

/** Asks a worker to compare two states; the answer to the newest question counts. */
export function useCompared(before: Design | null, after: Design | null, view: SceneView): Outcome {
  const [outcome, setOutcome] = useState<Outcome>(WORKING)
  useEffect(() => {
    if (!before || !after) return
    let wanted = true
    setOutcome(WORKING)
    compareStates({ before, after, view }).then(
      (compared) => wanted && setOutcome({ is: 'done', compared }),
      (error: Error) => wanted && setOutcome({ is: 'failed', why: error.message }),
    )
    return () => {
      wanted = false
    }
  }, [before, after, view])
  return outcome
}
