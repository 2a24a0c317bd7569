import type { PlannedDevice } from '../../operating/plan'
import { notKnown } from '../expect'
import { fullAndLow, isPoint, onlyThese, type Rig, switchedOn } from '../rig'
import { shuntReadings } from '../shuntreading'
import type { StepCaution, TestStep } from '../step'
import { allAtOnce, heaviestLoad } from '../together'

/** The load-side shunts with one load and with all of them: the same figures that the drawing was checked for. */
export function loadSideSteps(rig: Rig): TestStep[] {
  if (!rig.plan.shunts.some(({ branch }) => rig.plan.border.branches.get(branch)!.branch.measures === 'load'))
    return []
  const one = heaviestLoad(rig)
  const { on, left } = allAtOnce(rig)
  return [
    ...(one ? [step(rig, 'one', [one], [])] : []),
    ...(on.length > 1 ? [step(rig, 'all', on, left)] : []),
  ]
}

function step(
  rig: Rig,
  key: 'one' | 'all',
  on: readonly PlannedDevice[],
  left: readonly PlannedDevice[],
): TestStep {
  const ids = on.map((x) => x.id)
  const found = fullAndLow(rig, onlyThese(rig, ids))
  const because = isPoint(found) ? null : notKnown('no-operating-point', found.parts)
  const cautions: StepCaution[] = key === 'all' ? ['heavy-current', 'moves'] : []
  return {
    key: `load-side/${key}`,
    group: 'load-side',
    tells: key === 'one' ? 'one-load' : 'all-loads',
    parts: key === 'one' ? on.map((x) => x.part) : [],
    conductors: [],
    cautions,
    setting: {
      loads: key === 'one' ? on.map((x) => x.part) : 'all',
      on: switchedOn(rig, ids),
      ...(left.length > 0 ? { without: [...new Set(left.map((x) => x.part))] } : {}),
    },
    readings: shuntReadings(rig, isPoint(found) ? found : [], null, because),
  }
}
