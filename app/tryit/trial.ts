import { create } from 'zustand'
import {
  type Control,
  carriedOver,
  changed,
  controlsOf,
  type Design,
  type NoOperatingPoint,
  type OperatingChange,
  type OperatingPoint,
  type OperatingState,
  operate,
  usualState,
} from '../../engine'
import { useOpen } from '../store/open'
import { setTrying, useView } from '../store/view'

/** A design in use: how it is switched, and what then flows. It lies beside the design and never changes it. */
export interface Trial {
  readonly design: Design
  readonly controls: readonly Control[]
  readonly state: OperatingState
  readonly point: OperatingPoint | NoOperatingPoint
}

/** null: nothing has been tried yet. It stays when the mode is left, so that one can come back to it. */
export const useTrial = create<{ readonly trial: Trial | null }>(() => ({ trial: null }))

function show(design: Design, controls: readonly Control[], state: OperatingState): void {
  const point = operate(design, state)
  useTrial.setState({ trial: { design, controls, state: point.ok ? point.state : state, point } })
}

/** Begins with everything as usual; where this design was tried before, with the switches as they were left. */
export function tryOut(): void {
  const { design } = useOpen.getState()
  const before = useTrial.getState().trial
  const usual = usualState(design)
  const state = before?.design.id === design.id ? carriedOver(before.state, usual, design) : usual
  show(design, controlsOf(design), state)
  setTrying(true)
}

export const backToDrawing = (): void => setTrying(false)

export const toggleTrying = (): void => (useView.getState().trying ? backToDrawing() : tryOut())

/** Makes changes together, and lets relays and currents follow. */
export function put(...changes: readonly OperatingChange[]): void {
  const { trial } = useTrial.getState()
  if (!trial) return
  const state = changes.reduce(changed, trial.state)
  if (state !== trial.state) show(trial.design, trial.controls, state)
}

/** Everything as usual again. */
export function putAllBack(): void {
  const { trial } = useTrial.getState()
  if (trial) show(trial.design, trial.controls, usualState(trial.design))
}

/** Another design on the table ends the trial. */
useOpen.subscribe((now, before) => {
  if (now.design !== before.design && useView.getState().trying) backToDrawing()
})
