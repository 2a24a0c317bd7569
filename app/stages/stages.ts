import { type LucideIcon, PencilRuler } from 'lucide-react'
import type { ComponentType, LazyExoticComponent } from 'react'
import type { Stage } from '../store/view'

/** A stage of the job with a page of its own; the drawing has the canvas instead. */
export interface StageRow {
  readonly key: Stage
  readonly title: string
  readonly about: string
  readonly icon: LucideIcon
  /** Loaded when it is first looked at: `lazy(() => import('./bench/BenchPage'))`. */
  readonly page: LazyExoticComponent<ComponentType> | null
}

/** Every stage, in the order of the job. */
export const STAGES: readonly StageRow[] = [
  { key: 'drawing', title: 'Drawing', about: 'Draw, check and size', icon: PencilRuler, page: null },
]
