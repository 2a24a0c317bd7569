import { create } from 'zustand'
import type { StepRecord } from '../../../engine'
import { readPreference, writePreference } from '../../files/preference'

interface LookingState {
  /** Key of the step in hand; null: the first one that is not done. */
  readonly at: string | null
  /** The list over the step, where there is no room for both. */
  readonly list: boolean
  /** Signatures in place of a step. */
  readonly signing: boolean
  /** Who measures. */
  readonly by: string
}

export const useLooking = create<LookingState>(() => ({
  at: null,
  list: false,
  signing: false,
  by: readPreference('measured-by') ?? '',
}))

const set = useLooking.setState

export const takeStep = (at: string) => set({ at, list: false, signing: false })
/** The step that was in hand of itself stays so, whatever is entered. */
export const keepStep = (at: string) => set({ at })
export const toggleList = () => set((s) => ({ list: !s.list }))
export const showSigning = () => set({ signing: true, list: false })

export function setBy(by: string): void {
  writePreference('measured-by', by)
  set({ by })
}

/** The step in hand: the one chosen, or the first that is not done. */
export const stepInHand = (steps: readonly StepRecord[], at: string | null): StepRecord | undefined =>
  steps.find((s) => s.step.key === at) ?? steps.find((s) => s.state === 'not-done') ?? steps[0]
