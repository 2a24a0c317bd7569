import type { Answer, RunAnswer, WorstCase } from '../calc/answers'
import { conductorOhms, TERMINATION_OHMS } from '../calc/network'
import type { Conductor } from '../model/design'
import type { Amps, Ohms } from '../units'
import { type Case, found, type Rule } from './rule'

/** Shares further apart than this part of an equal share are uneven. */
const UNEVEN = 0.1
/** A termination that has been made or kept badly, as a multiple of a good one. Common practice, no source. */
const POOR = 5

/**
 * C4: conductors side by side between the same two places do not share equally: their sizes or lengths differ, or
 * they are so short that their terminations decide. Told with the spread: every other termination poor.
 */
export const unevenShare: Rule = {
  id: 'C4',
  looksFor: 'conductors in parallel that share unevenly',
  check: (c) => groupsOf(c).flatMap((group) => judge(c, group) ?? []),
}

interface Member {
  readonly conductor: Conductor
  readonly ohms: Ohms
  readonly amps: Amps
  readonly ampacity: Amps | null
}

function judge(c: Case, group: readonly Conductor[]): ReturnType<typeof found> | null {
  const members = group.flatMap((conductor) => memberOf(c, conductor) ?? [])
  if (members.length < group.length) return null
  const total = members.reduce((sum, m) => sum + m.amps, 0)
  const equal = total / members.length
  if (!(equal > 0)) return null
  const most = members.reduce((a, b) => (b.amps > a.amps ? b : a))
  const spread = members.map((m) => ({ ...m, poor: total * shareAtPoor(m, members) }))
  const over = spread.filter((m) => m.ampacity !== null && m.poor > m.ampacity * (1 + 1e-9))
  if (most.amps <= equal * (1 + UNEVEN) && over.length === 0) return null
  const told =
    over.length > 0
      ? over.reduce((a, b) => (b.poor > a.poor ? b : a))
      : spread.find((m) => m.conductor === most.conductor)!
  return found(
    'C4',
    over.length > 0 ? 'warning' : 'note',
    'common-practice',
    { conductors: group.map((g) => g.id) },
    { conductors: group.map((g) => g.id), most: told.conductor.id, amps: told.amps, equal, total },
    {
      actual: { value: told.poor, unit: 'A' },
      ...(told.ampacity === null ? {} : { limit: { value: told.ampacity, unit: 'A' } }),
    },
  )
}

/** Share of one when its own terminations are good and those of all others poor. */
function shareAtPoor(of: Member, members: readonly Member[]): number {
  const more = 2 * TERMINATION_OHMS * (POOR - 1)
  const conductance = (m: Member): number => 1 / (m === of ? m.ohms : m.ohms + more)
  return conductance(of) / members.reduce((sum, m) => sum + conductance(m), 0)
}

function memberOf({ answers, design }: Case, conductor: Conductor): Member | null {
  const run = answers.runs.get(conductor.id)
  const ohms = conductorOhms(design, conductor)
  const amps = run ? greatest(run) : null
  if (ohms === null || !run || amps === null) return null
  return { conductor, ohms, amps, ampacity: 'value' in run.ampacity ? run.ampacity.value.amps : null }
}

/** Greatest current either way, as computed; null where it is not known or has no bound. */
function greatest(run: RunAnswer): Amps | null {
  const amps = (a: Answer<WorstCase>): number =>
    'value' in a && a.value.amps !== 'unlimited' ? a.value.amps : Number.NaN
  const most = Math.max(amps(run.forward), amps(run.backward))
  return Number.isNaN(most) ? null : most
}

/** Conductors between the same two nodes, two or more. */
function groupsOf({ border }: Case): Conductor[][] {
  const groups = new Map<string, Conductor[]>()
  for (const b of border.form.branches) {
    const conductor = border.conductors.get(b.id)
    if (!conductor || b.kind !== 'conductor' || b.from === b.to) continue
    const key = [b.from, b.to].sort().join(' ')
    const list = groups.get(key)
    if (list) list.push(conductor)
    else groups.set(key, [conductor])
  }
  return [...groups.values()].filter((g) => g.length > 1)
}
