import type { Design } from '../../model/design'
import { type Rig, rigOf } from './rig'
import { STEP_GROUPS, type StepGroup, type TestStep } from './step'
import { alertSteps } from './steps/alerts'
import { chargingSteps } from './steps/charging'
import { cutOutSteps } from './steps/cutouts'
import { dataSteps } from './steps/data'
import { farLoadSteps } from './steps/farloads'
import { isolatingSteps } from './steps/isolating'
import { loadSteps } from './steps/loads'
import { loadSideSteps } from './steps/loadside'
import { polaritySteps } from './steps/polarity'
import { relaySteps } from './steps/relays'
import { resistanceSteps } from './steps/resistances'
import { shuntSteps } from './steps/shunts'
import { sourceSteps } from './steps/sources'
import { visualSteps } from './steps/visual'

const MAKERS: Readonly<Record<StepGroup, (rig: Rig) => TestStep[]>> = {
  visual: visualSteps,
  polarity: polaritySteps,
  resistance: resistanceSteps,
  isolating: isolatingSteps,
  'source-alone': sourceSteps,
  loads: loadSteps,
  relays: relaySteps,
  shunts: shuntSteps,
  'load-side': loadSideSteps,
  'far-loads': farLoadSteps,
  charging: chargingSteps,
  'cut-outs': cutOutSteps,
  data: dataSteps,
  alerts: alertSteps,
}

const remembered = new WeakMap<
  Design['parts'],
  { readonly of: Design; readonly steps: readonly TestStep[] }
>()

/**
 * Every test of a system, in the order in which they are made, with what each should show: a load flow of the state
 * in which it is measured, ratings, and the tolerances of practice.ts. Never throws on a design that the reader accepts.
 * Some four load flows a load, three a fuse; remembered while parts, conductors and settings stay, so that entries in
 * the record cost nothing.
 */
export function commissioningSteps(design: Design): readonly TestStep[] {
  const known = remembered.get(design.parts)
  if (known && isSame(known.of, design)) return known.steps
  const rig = rigOf(design)
  const steps = STEP_GROUPS.flatMap((group) => MAKERS[group](rig)).map((step) => withMonitor(rig, step))
  remembered.set(design.parts, { of: design, steps })
  return steps
}

/** The monitor stays on where something is switched. */
function withMonitor({ monitor }: Rig, step: TestStep): TestStep {
  const { isolated, loads } = step.setting
  if (isolated || loads === undefined || monitor.length === 0) return step
  const stays = monitor.filter((id) => !Array.isArray(loads) || !loads.includes(id))
  return { ...step, setting: { ...step.setting, stays } }
}

/** Do two designs ask for the same steps, as nothing differs that they hang on? */
export const sameSteps = (a: Design, b: Design): boolean => a.parts === b.parts && isSame(a, b)

const isSame = (a: Design, b: Design): boolean =>
  a.conductors === b.conductors &&
  a.settings === b.settings &&
  a.ownConductors === b.ownConductors &&
  a.ownRules === b.ownRules
