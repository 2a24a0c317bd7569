import type { ConductorId, Design } from '../../model/design'
import { sizeIn } from '../../model/sizes'
import { networkOf } from '../network'
import type { DropCut } from './dropcuts'
import type { FreeRun } from './freeruns'
import type { Selected } from './leastcopper'
import type { RatedWays } from './rateways'
import { copperKg } from './runoptions'
import { sizeReason } from './sizereason'
import type { SizedRuns } from './sizeruns'
import type { BondNeed, HeatNeed, Kept, Kilograms, RatingChoice, RunChoice, Sized } from './sizing'
import { type Trial, trialEdit } from './trial'

interface Settled {
  readonly design: Design
  /** With everything chosen. */
  readonly now: Design
  readonly trial: Trial
  readonly rated: RatedWays
  readonly sized: SizedRuns
  readonly heat: ReadonlyMap<ConductorId, HeatNeed>
  readonly bonds: ReadonlyMap<ConductorId, BondNeed>
  readonly free: readonly FreeRun[]
  readonly kept: readonly Kept[]
}

/** What was chosen, each choice with its reason. */
export function sizedOf(s: Settled): Sized {
  const choices = [...runChoices(s), ...ratingChoices(s)]
  return {
    edit: trialEdit(s.design, s.trial),
    changes: choices.filter((c) => c.from !== c.to),
    choices,
    kept: s.kept,
    copperBeforeKg: copperOf(s.design),
    copperAfterKg: copperOf(s.now),
  }
}

function runChoices({ free, sized, heat, bonds }: Settled): RunChoice[] {
  const byId = new Map(free.map((run) => [run.conductor.id, run]))
  const dropAt = (cut: DropCut, instead: Selected): number => {
    let volts = 0
    for (const [id, amps] of cut.amps) {
      const option = byId.get(id)?.options[instead.get(id) ?? sized.pick.get(id)!]
      volts += option ? Math.max(0, amps) * option.ohms : amps * sized.ohmsOf(id)
    }
    return volts
  }
  return free.map((run) => {
    const { id, size } = run.conductor
    const chosen = sized.pick.get(id)!
    const needs = sized.needs.get(id)!
    return {
      conductor: id,
      from: size,
      to: run.options[chosen]!.size.key,
      because: sizeReason(
        run,
        chosen,
        needs,
        { heat: heat.get(id), bond: bonds.get(id) },
        sized.cuts,
        dropAt,
      ),
    }
  })
}

const ratingChoices = ({ trial, rated }: Settled): RatingChoice[] =>
  [...rated.because].map(([way, because]) => ({
    part: way.part.id,
    way: way.way,
    from: way.ratingA,
    to: trial.ratings.get(way)!,
    because,
  }))

/** Conductors without a length count nowhere; null where one has no size. */
function copperOf(design: Design): Kilograms | null {
  let kg = 0
  for (const { size, lengthM } of networkOf(design, 'any', new Set()).conductors.values()) {
    if (lengthM === null) continue
    const of = sizeIn(design, size)
    if (!of) return null
    kg += copperKg(of, lengthM)
  }
  return kg
}
