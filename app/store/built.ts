import { create } from 'zustand'
import type { BuiltAnalysed, Design } from '../../engine'

/** What the checks say of the design as it was built. */
interface BuiltState {
  /** null: nothing was built otherwise, or it is not known yet. */
  readonly built: BuiltAnalysed | null
  /** The design that it speaks of; another one than on the table: it is being worked out. */
  readonly of: Design | null
  /** Not null: the computation broke off, and why. */
  readonly failure: string | null
}

export const useBuilt = create<BuiltState>(() => ({ built: null, of: null, failure: null }))
