import type { OperatingPoint } from '../operating/state'
import { ampsWithin, between, notKnown } from './expect'
import { DISPLAY_AMPS, DISPLAY_SHARE, LOAD_AMPS, LOAD_SHARE, ZERO_AMPS, ZERO_SHARE } from './practice'
import { probe } from './probes'
import type { Rig } from './rig'
import type { Against, Expected, Reading } from './step'

/** What the clamp meter is put round: its reading, what it should be, and how the shunts stand without that current. */
export interface ClampOf {
  readonly reading: string
  readonly amps: number
  /** Absent: it is put round the conductor of the shunt itself. */
  readonly without?: OperatingPoint
}

/** Less than this is nothing, A; of a current all but this share is all of it. */
const NOTHING = 0.05
const ALL_BUT = 0.02

/**
 * What each shunt shows in a state, at full and at low batteries. `because`: nothing can be expected. Discharge and the
 * return current of loads count as plus.
 */
export function shuntReadings(
  rig: Rig,
  points: readonly OperatingPoint[],
  clamp: ClampOf | null,
  because: Expected | null,
  only?: 'load' | 'battery',
): Reading[] {
  return rig.plan.shunts.flatMap(({ part, branch: id }): Reading[] => {
    const { branch } = rig.plan.border.branches.get(id)!
    if (only !== undefined && branch.measures !== only) return []
    const shows = points.map((p) => p.shunts.get(part)?.shows ?? 0)
    return [
      {
        key: `shunt:${part}`,
        asks: 'shunt',
        instrument: 'display',
        at: [probe(part)],
        conductors: [],
        expected: because ?? untrue(points, part) ?? shuntExpected(rig, part, shows, clamp),
      },
    ]
  })
}

/** As drawn the shunt shows something else than it should: a reading like that proves nothing, whatever it is. */
function untrue(points: readonly OperatingPoint[], part: string): Expected | null {
  const wrong = points.some((p) => {
    const { off = 0, truth = 0 } = p.shunts.get(part) ?? {}
    return Math.abs(off) > DISPLAY_SHARE * Math.abs(truth) + DISPLAY_AMPS
  })
  return wrong ? notKnown('untrue-as-drawn', [part]) : null
}

function shuntExpected(rig: Rig, part: string, shows: readonly number[], clamp: ClampOf | null): Expected {
  if (shows.length === 0) return notKnown('no-operating-point', [part])
  if (shows.every((a) => Math.abs(a) < NOTHING)) return zero(rig, part)
  const against = clamp && heldAgainst(part, shows[0]!, clamp)
  const amount = Math.max(LOAD_AMPS, zeroBand(rig, part))
  return ampsWithin(shows, LOAD_SHARE, amount, against ? { against } : {})
}

/** Held against the clamp meter where all of that current passes the shunt, one way or the other. */
function heldAgainst(part: string, shows: number, { reading, amps, without }: ClampOf): Against | null {
  const rest = without?.shunts.get(part)?.shows ?? 0
  const times = shows - rest < 0 ? -1 : 1
  if (without && !(Math.abs(shows - rest - times * amps) <= ALL_BUT * amps + NOTHING)) return null
  const plus = Number((shows - times * amps).toFixed(2)) + 0
  return { reading, times, plus, share: DISPLAY_SHARE, amount: DISPLAY_AMPS }
}

/** Nothing flows: what a display may show all the same, by the rating of its shunt. */
export function zero(rig: Rig, part: string): Expected {
  const band = zeroBand(rig, part)
  return between('A', 0, -band, band)
}

function zeroBand({ plan }: Rig, part: string): number {
  const shunt = [...plan.border.branches.values()].find((b) => b.part === part && b.branch.kind === 'shunt')
  return Math.max(ZERO_AMPS, ZERO_SHARE * (shunt?.branch.ratingA ?? 0))
}
