import { type PartId, partById, terminalsOf, type XY } from '../../engine'
import { say } from '../store/say'
import { sheetPoint } from '../store/sheetpoint'
import { controlsByPart } from './atpart'
import { flipOf, isOn, meant, stateWords } from './flip'
import { put, useTrial } from './trial'

/** A touch on a part while trying out: flips what is meant, or shows the part's switches in the panel. */
export function touchPart(id: PartId, clientX: number, clientY: number): void {
  const { trial } = useTrial.getState()
  const part = trial && partById(trial.design, id)
  if (!trial || !part) return
  const own = controlsByPart(trial.controls).get(id) ?? []
  const at = sheetPoint(clientX, clientY)
  const controls = meant(own, at && nearest(at))
  const [control] = controls
  if (!control) {
    if (own.length === 0) say(`${part.designation} has nothing to switch.`)
    else document.querySelector<HTMLElement>(`[data-control-of="${id}"]`)?.focus()
    return
  }
  // Poles of one switch go together, from wherever the first one stands.
  const first = isOn(control, trial.state)
  put(...controls.filter((c) => isOn(c, trial.state) === first).map((c) => flipOf(c, trial.state)))
  const { trial: now } = useTrial.getState()
  if (now)
    say(
      `${[part.designation, controls.length === 1 ? control.name : ''].filter(Boolean).join(' ')}: ${stateWords(control, now.state)}.`,
    )

  function nearest([x, y]: XY): string | null {
    const far = (t: { readonly x: number; readonly y: number }) => Math.hypot(t.x - x, t.y - y)
    return [...terminalsOf(part!, trial!.design.conductors)].sort((a, b) => far(a) - far(b))[0]?.key ?? null
  }
}
