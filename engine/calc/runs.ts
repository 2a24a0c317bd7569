import type { Conductor, ConductorId, Design, PartId } from '../model/design'
import type { Pole } from '../model/kind'
import { sizeIn } from '../model/sizes'
import { ampacityOf } from '../tables/ampacity'
import type { RuleSet } from '../tables/rulesets'
import type { RunAnswer, ShuntAnswer } from './answers'
import { guardedEnd } from './guarded'
import { judged } from './judged'
import { lastingOf } from './lasting'
import { meteredBy } from './metered'
import { natures } from './nature'
import { type Border, conductorOhms } from './network'
import type { State } from './solved'
import { worse, worstOf } from './worst'

export interface RunCase {
  readonly design: Design
  readonly ruleSet: RuleSet
  readonly border: Border
  readonly states: readonly State[]
  readonly shunts: ReadonlyMap<PartId, ShuntAnswer>
  readonly poles: ReadonlyMap<string, Pole>
}

/** Answers about every conductor of a design. */
export function runsOf(c: RunCase): Map<ConductorId, RunAnswer> {
  const natureOf = natures(c.states[0]!.any.p, c.poles)
  const metered = meteredBy(c.shunts.values(), c.border.devices)
  return new Map(c.design.conductors.map((w) => [w.id, runOf(c, w, natureOf(w), metered)]))
}

function runOf(
  c: RunCase,
  w: Conductor,
  nature: RunAnswer['nature'],
  metered: ReturnType<typeof meteredBy>,
): RunAnswer {
  const { states, ruleSet } = c
  const forward = worstOf(states, w.id, 'max')
  const backward = worstOf(states, w.id, 'min')
  const worst = worse(forward, backward)
  const ampacity = ampacityOf(ruleSet, w, c.design.settings.ambientC, (key) => sizeIn(c.design, key))
  const from = guardedEnd(states, w.id, 'from')
  const to = guardedEnd(states, w.id, 'to')
  const sustained = lastingOf(states, w.id)
  const limitA = 'value' in ampacity ? ampacity.value.amps * ruleSet.deviceShare.value : null
  const ohms = conductorOhms(c.design, w)
  return {
    forward,
    backward,
    design: w.designCurrent
      ? { value: w.designCurrent.amps }
      : 'value' in worst
        ? { value: worst.value.amps }
        : worst,
    ownFigure: w.designCurrent !== null,
    from,
    to,
    ...judged(states, ruleSet, w, limitA, { from, to, sustained }),
    sustained,
    ampacity: 'value' in ampacity ? ampacity : { ...ampacity, parts: [], conductors: [w.id] },
    ohms: ohms === null ? { notChecked: 'missing-run', parts: [], conductors: [w.id] } : { value: ohms },
    metered: c.border.conductors.has(w.id) ? metered([forward, backward]) : null,
    nature,
  }
}
