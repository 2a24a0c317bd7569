import type { Design, Part, PartId } from '../../model/design'
import { partById } from '../../model/lookup'
import type { Amps, Watts } from '../../units'
import { operate } from '../operate'
import { changed } from '../operating/change'
import type { OperatingPoint, OperatingState } from '../operating/state'
import { type ChargeReading, chargingOf } from './charging'
import { type Draw, drawsOf } from './draws'
import { type Effects, effectsOf, withOpen } from './effects'
import { type RestTable, restTables } from './rest'
import { isMonitoring } from './things'

/** What a shunt shows in a usual state: above 0 flows out of the battery, below 0 into it. */
export interface ShuntReadings {
  readonly part: Part
  readonly measures: 'battery' | 'load'
  readonly ratingA: Amps | null
  /** A; null: there is no operating point, as figures are missing. */
  readonly allOn: Amps | null
  readonly switchedOff: Amps | null
  readonly watching: Amps | null
}

export interface Readings {
  readonly shunts: readonly ShuntReadings[]
  readonly charging: readonly ChargeReading[]
  /** Everything on, no source: where the power goes. null: not known. */
  readonly allOn: { readonly drawnW: Watts; readonly lostW: Watts; readonly batteryW: Watts } | null
  /** What each thing takes; empty: not known. */
  readonly draws: readonly Draw[]
  /** Drawn by what only watches and shows, W. null: not known. */
  readonly watchingW: Watts | null
  /** There are hand switches other than isolators. */
  readonly byHand: boolean
  /** Loads that no hand switch but an isolator turns off. */
  readonly always: readonly Part[]
  /** Figures are missing from some parts: they are left out of the currents above. */
  readonly leftOut: readonly Part[]
  /** Rest voltage by charge of the chemistry of each system battery. */
  readonly rest: readonly RestTable[]
}

/** What is normal, from load flows of usual states. A few load flows, and one for each source. */
export function readingsOf(design: Design): Readings {
  const effects = effectsOf(design)
  const { plan, usual, things } = effects
  const share = (state: OperatingState, test: (part: Part) => boolean): OperatingState =>
    plan.devices.reduce((now, { id, part }) => {
      const found = partById(design, part)
      return found && state.loads.has(id)
        ? changed(now, { set: 'load', id, share: test(found) ? 1 : 0 })
        : now
    }, state)
  const byHand = effects.handles.filter((h) => h.is === 'hand' && h.part.kind !== 'isolator')
  const off = byHand.reduce(withOpen, usual)
  const points = {
    allOn: pointOf(design, usual),
    switchedOff: pointOf(design, off),
    watching: pointOf(design, share(usual, isMonitoring)),
  }
  const switched = new Set(byHand.flatMap((h) => [...(effects.opened.get(h)?.off ?? [])]))
  const idle = share(usual, () => false)
  const power = points.allOn?.power
  const leftOut = points.allOn?.notes.filter((n) => n.note === 'missing-figure').flatMap((n) => n.parts) ?? []
  return {
    shunts: plan.shunts.flatMap(({ part }) => shuntReadings(design, effects, part, points)),
    charging: chargingOf(design, effects, idle),
    allOn: power
      ? { drawnW: power.loads, lostW: power.converters + power.ways, batteryW: power.batteries }
      : null,
    draws: points.allOn ? drawsOf(effects, points.allOn) : [],
    watchingW: points.watching?.power.batteries ?? null,
    byHand: byHand.length > 0,
    always: things.flatMap((t) => (t.role === 'load' && !switched.has(t.part.id) ? [t.part] : [])),
    leftOut: leftOut.flatMap((id) => partById(design, id) ?? []),
    rest: restTables(design),
  }
}

function pointOf(design: Design, state: OperatingState): OperatingPoint | null {
  const point = operate(design, state)
  return point.ok ? point : null
}

function shuntReadings(
  design: Design,
  { plan }: Effects,
  id: PartId,
  points: Readonly<Record<'allOn' | 'switchedOff' | 'watching', OperatingPoint | null>>,
): ShuntReadings[] {
  const part = partById(design, id)
  const branch = [...plan.border.branches.values()].find((b) => b.part === id)?.branch
  if (!part || !branch) return []
  const shows = (point: OperatingPoint | null): Amps | null => point?.shunts.get(id)?.shows ?? null
  return [
    {
      part,
      measures: branch.measures ?? 'battery',
      ratingA: branch.ratingA,
      allOn: shows(points.allOn),
      switchedOff: shows(points.switchedOff),
      watching: shows(points.watching),
    },
  ]
}
