import { BookOpen, Gauge, Hammer, History, type LucideIcon, PencilRuler, Printer, Table2 } from 'lucide-react'
import { type ComponentType, type LazyExoticComponent, lazy } from 'react'
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
  {
    key: 'schedules',
    title: 'Schedules',
    about: 'Conductors, cut list, fuses, parts: made from the drawing',
    icon: Table2,
    page: lazy(() => import('./schedules/SchedulesPage')),
  },
  {
    key: 'packs',
    title: 'Packs',
    about: 'On paper: for designer, workshop and customer',
    icon: Printer,
    page: lazy(() => import('./packs/PacksPage')),
  },
  {
    key: 'bench',
    title: 'Bench',
    about: 'Build conductor by conductor and tick off what is done',
    icon: Hammer,
    page: lazy(() => import('./bench/BenchPage')),
  },
  {
    key: 'commissioning',
    title: 'Commission',
    about: 'Commissioning record: measure step by step against what the design expects',
    icon: Gauge,
    page: lazy(() => import('./commissioning/CommissioningPage')),
  },
  {
    key: 'handover',
    title: 'Handover',
    about: 'What the customer keeps: fuses, switches, readings, in plain words',
    icon: BookOpen,
    page: lazy(() => import('./handover/HandoverPage')),
  },
  {
    key: 'revisions',
    title: 'Revisions',
    about: 'Issue the design, look at what was issued, compare any two states',
    icon: History,
    page: lazy(() => import('./revisions/RevisionsPage')),
  },
]
