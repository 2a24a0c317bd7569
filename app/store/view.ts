import { create } from 'zustand'
import type { ConductorId, PartId, Problem, SceneView, Selection, XY } from '../../engine'
import { readPreference, writePreference } from '../files/preference'
import type { Lens } from '../lenses/lens'

/** What lies over the drawing at the moment; one at a time. */
export type Overlay =
  | { readonly is: 'place-by-name'; readonly at: XY | null }
  | { readonly is: 'find' }
  | { readonly is: 'join'; readonly from: PartId }
  | { readonly is: 'designs' }
  | { readonly is: 'keys' }
  | { readonly is: 'cautions' }
  | { readonly is: 'size-it'; readonly selection: Selection | null }
  | { readonly is: 'earlier' }
  | { readonly is: 'reconnect'; readonly conductor: ConductorId; readonly end: 'from' | 'to' }
  | {
      readonly is: 'problems'
      readonly file: string
      readonly problems: readonly Problem[]
      /** Opens what could be read all the same; absent where nothing could. */
      readonly openAnyway?: () => void
    }

/** A stage of the job: each has the whole table to itself. */
export type Stage = 'drawing' | 'schedules' | 'bench' | 'commissioning' | 'handover' | 'revisions' | 'packs'

/** Where the canvas should look next. A new object each time, so that asking twice works twice. */
export type LookAt =
  | { readonly at: 'all' }
  /** Another view: all of it, unless some of its parts are in sight. */
  | { readonly at: 'view' }
  | { readonly at: 'zoom'; readonly by: number }
  | { readonly at: 'box'; readonly box: Box }
  | {
      readonly at: 'items'
      readonly parts: readonly PartId[]
      readonly conductors: readonly ConductorId[]
      readonly zoom: boolean
    }

/** A rectangle on the sheet, mm. */
export interface Box {
  readonly x: number
  readonly y: number
  readonly w: number
  readonly h: number
}

interface ViewState {
  readonly stage: Stage
  readonly view: SceneView
  readonly parts: ReadonlySet<PartId>
  readonly conductors: ReadonlySet<ConductorId>
  /** Selected texts on the sheet, by id. */
  readonly texts: ReadonlySet<string>
  /** The selected outline. */
  readonly zone: string | null
  /** A text under the pen: an old one by its id, or a new one at a place, mm. */
  readonly pen: { readonly id: string | null; readonly at: XY } | null
  /** Key of the finding whose places are marked. */
  readonly finding: string | null
  readonly overlay: Overlay | null
  readonly lookAt: LookAt | null
  /** The middle of what is in sight, mm. */
  readonly middle: XY
  readonly shelf: boolean
  /** What the drawing is looked at through; null: as it is. */
  readonly lens: Lens | null
  /** The design is in use and cannot be changed: switches are flipped, currents run. */
  readonly trying: boolean
  /** The part under the pointer, while a lens asks for it. */
  readonly pointed: PartId | null
}

const NONE: ReadonlySet<string> = new Set()

/** The view that was chosen in this browser; at the first start the single-line one. */
function keptView(): SceneView {
  const kept = readPreference('view')
  return kept === 'both-poles' || kept === 'data' ? kept : 'single-line'
}

/** Neither text nor outline nor finding. */
const NOTHING = { texts: NONE, zone: null, finding: null } as const

export const useView = create<ViewState>(() => ({
  stage: 'drawing',
  view: keptView(),
  parts: NONE,
  conductors: NONE,
  texts: NONE,
  zone: null,
  pen: null,
  finding: null,
  overlay: null,
  lookAt: null,
  middle: [100, 70],
  shelf: true,
  lens: null,
  pointed: null,
  trying: false,
}))

const set = useView.setState

export function setView(view: SceneView): void {
  writePreference('view', view)
  set({ view, lookAt: { at: 'view' } })
}
/** Another stage; trying out ends with the drawing. */
export const setStage = (stage: Stage) =>
  set(stage === 'drawing' ? { stage } : { stage, trying: false, pen: null })

/** Begins or ends trying out; nothing stays selected, and no lens on. */
export const setTrying = (trying: boolean) =>
  set({ trying, lens: null, pointed: null, pen: null, ...NOTHING, parts: NONE, conductors: NONE })
/** One lens at a time; the one that is on goes off. */
export const turnLens = (lens: Lens) => set((s) => ({ lens: s.lens === lens ? null : lens, pointed: null }))
export const pointAt = (part: PartId | null) => set({ pointed: part })
export const setOverlay = (overlay: Overlay | null) => set({ overlay })
export const toggleShelf = () => set((s) => ({ shelf: !s.shelf }))

export const setPen = (pen: ViewState['pen']) => set({ pen })

export function select(
  parts: Iterable<PartId>,
  conductors: Iterable<ConductorId> = [],
  texts: Iterable<string> = [],
): void {
  set({ ...NOTHING, parts: new Set(parts), conductors: new Set(conductors), texts: new Set(texts) })
}

export const selectZone = (zone: string) => set({ ...NOTHING, parts: NONE, conductors: NONE, zone })

export function toggleText(id: string): void {
  const texts = new Set(useView.getState().texts)
  if (!texts.delete(id)) texts.add(id)
  set({ texts, zone: null, finding: null })
}

export function toggleConductor(id: ConductorId): void {
  const conductors = new Set(useView.getState().conductors)
  if (!conductors.delete(id)) conductors.add(id)
  set({ conductors, zone: null, finding: null })
}

export const clearSelection = () => select([])

/** Shows places without changing what is selected. */
export function lookAt(parts: readonly PartId[], conductors: readonly ConductorId[], zoom = false): void {
  set({ lookAt: { at: 'items', parts, conductors, zoom } })
}
export const lookAtBox = (box: Box) => set({ lookAt: { at: 'box', box } })
export const zoomBy = (by: number) => set({ lookAt: { at: 'zoom', by } })
export const lookAtAll = () => set({ lookAt: { at: 'all' } })

/** Selects a finding: its places are marked, selected and brought into sight. */
export function showFinding(key: string, parts: readonly PartId[], conductors: readonly ConductorId[]): void {
  set({ ...NOTHING, parts: new Set(parts), conductors: new Set(conductors), finding: key })
  lookAt(parts, conductors)
}
