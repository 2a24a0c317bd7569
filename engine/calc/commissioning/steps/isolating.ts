import { kindOf } from '../../../kinds/all'
import type { PartId } from '../../../model/design'
import type { PartBranch } from '../../../model/kind'
import type { OperatingState } from '../../operating/state'
import { dead, notKnown, voltsOrDead } from '../expect'
import { DEAD_VOLTS } from '../practice'
import { negativeFor, probe, volts } from '../probes'
import { fullAndLow, isPoint, type Rig } from '../rig'
import type { Expected, Probe, Reading, TestStep } from '../step'

/** Isolators and fuses do what they are there for: what lies behind them is dead while they are open or out. */
export const isolatingSteps = (rig: Rig): TestStep[] => [...isolatorSteps(rig), ...fuseSteps(rig)]

function isolatorSteps(rig: Rig): TestStep[] {
  return rig.plan.contacts.flatMap(({ id, part }): TestStep[] => {
    if (kindOf(rig.part(part).kind)?.key !== 'isolator') return []
    const { branch } = rig.plan.border.branches.get(id)!
    const behind = probe(part, branch.to)
    const open = { ...rig.quiet, open: new Set([...rig.quiet.open, id]) }
    return [
      {
        key: `isolating/${part}`,
        group: 'isolating',
        tells: 'isolator',
        parts: [part],
        conductors: [],
        cautions: ['battery-short', 'arc'],
        setting: { loads: 'off', open: [part] },
        readings: [
          between(rig, 'open', 'isolator-open', behind, open),
          between(rig, 'closed', 'isolator-closed', behind, rig.quiet),
        ],
      },
    ]
  })
}

/** One step a fuse or block, one reading a way: the voltage behind it while it is out. */
function fuseSteps(rig: Rig): TestStep[] {
  const byPart = new Map<PartId, { id: string; branch: PartBranch }[]>()
  for (const [id, { part, branch }] of rig.plan.border.branches)
    if (branch.kind === 'fuse') byPart.set(part, [...(byPart.get(part) ?? []), { id, branch }])
  return [...byPart].map(([part, fuses]): TestStep => {
    const several = fuses.length > 1
    return {
      key: `isolating/${part}`,
      group: 'isolating',
      tells: 'fuses',
      parts: [part],
      conductors: [],
      cautions: ['battery-short', 'arc'],
      setting: { loads: 'off' },
      readings: fuses.map(({ id, branch }) => {
        const out = { ...rig.quiet, blown: new Set([id]) }
        const found = between(rig, `out:${branch.key}`, 'fuse-out', deadSide(rig, part, branch, out), out)
        return several ? { ...found, name: branch.name ?? branch.key } : found
      }),
    }
  })
}

/** The side of a fuse that is dead while it is out; where neither or both are, the one that it leads to. */
function deadSide(rig: Rig, part: PartId, branch: PartBranch, out: OperatingState): Probe {
  const [from, to] = [probe(part, branch.from), probe(part, branch.to)]
  const point = rig.at(out)
  if (!point.ok) return to
  const isDead = (at: Probe): boolean => {
    const negative = negativeFor(rig, at)
    return negative === null || Math.abs(volts(rig, point, at, negative)) < DEAD_VOLTS
  }
  return isDead(from) && !isDead(to) ? from : to
}

function between(rig: Rig, key: string, asks: Reading['asks'], at: Probe, state: OperatingState): Reading {
  const negative = negativeFor(rig, at)
  return {
    key,
    asks,
    instrument: 'voltmeter',
    at: negative ? [at, negative] : [at],
    conductors: [],
    expected: negative ? expectedVolts(rig, at, negative, state, asks) : notKnown('no-supply', [at.part]),
  }
}

function expectedVolts(
  rig: Rig,
  at: Probe,
  negative: Probe,
  state: OperatingState,
  asks: Reading['asks'],
): Expected {
  if (asks !== 'isolator-closed') {
    const point = rig.at(state)
    if (!point.ok) return notKnown('no-operating-point', point.parts)
    const v = volts(rig, point, at, negative)
    if (Math.abs(v) < DEAD_VOLTS) return dead()
  }
  const points = fullAndLow(rig, state)
  if (!isPoint(points)) return notKnown('no-operating-point', points.parts)
  return voltsOrDead(...points.map((p) => volts(rig, p, at, negative)))
}
