import type { MeterShare } from '../calc/answers'
import type { PartId } from '../model/design'
import { commonLeads, type Lead } from './commonlead'
import type { Finding } from './finding'
import { landedBehind, reroutedReturn, returnsOf } from './rerouted'
import { type Case, found, type Rule } from './rule'
import { isDeaf, isZero, measuredElsewhere } from './shares'

/**
 * M1: a load whose return misses the load-side shunt: what it draws is not shown. Loads that return together, by one conductor
 * behind which nothing else stands, are one finding: that conductor is landed in the wrong place.
 */
export const bypass: Rule = {
  id: 'M1',
  looksFor: 'loads that bypass the load-side shunt',
  check: (c) =>
    [...c.answers.shunts.values()].flatMap((shunt) => {
      if (shunt.role !== 'load' || isDeaf(shunt)) return []
      const missed = shunt.shares.filter(
        (s) => s.expected === 1 && isZero(s) && !measuredElsewhere(c.answers.shunts, shunt, s),
      )
      if (missed.length === 0) return []
      const leads = commonLeads(c, shunt.part, new Set(missed.map((s) => `${s.part}/${s.device}`)))
      return grouped(missed, leads).map(({ lead, all }) =>
        all.length === 1 || !lead ? single(c, shunt.part, all[0]!) : together(c, shunt.part, lead, all),
      )
    }),
}

interface Group {
  readonly lead: Lead | undefined
  readonly all: readonly MeterShare[]
}

function grouped(missed: readonly MeterShare[], leads: ReadonlyMap<string, Lead>): Group[] {
  const groups = new Map<string | MeterShare, Group>()
  for (const s of missed) {
    const lead = leads.get(`${s.part}/${s.device}`)
    const at = lead?.conductor ?? s
    groups.set(at, { lead, all: [...(groups.get(at)?.all ?? []), s] })
  }
  return [...groups.values()]
}

function single(c: Case, shunt: PartId, s: MeterShare): Finding {
  const fix = reroutedReturn(c, shunt, s.part, s.device)
  return found(
    'M1',
    'warning',
    'load-side-shunt',
    { parts: [s.part, shunt], conductors: returnsOf(c, s.part, s.device) },
    { part: s.part, shunt, ...drawOf(c, s.part, s.device) },
    { about: s.device, ...(fix ? { fix } : {}) },
  )
}

function together(c: Case, shunt: PartId, lead: Lead, all: readonly MeterShare[]): Finding {
  const fix = landedBehind(c, shunt, lead.conductor, lead.nearer)
  const loads = [...new Set(all.map((s) => s.part))]
  const amps = all.reduce((sum, s) => sum + (drawOf(c, s.part, s.device).amps ?? Number.NaN), 0)
  return found(
    'M1',
    'warning',
    'load-side-shunt',
    { parts: [...loads, shunt], conductors: [lead.conductor] },
    { loads, lead: lead.conductor, shunt, ...(Number.isNaN(amps) ? {} : { amps }) },
    fix ? { fix } : {},
  )
}

function drawOf(c: Case, part: string, device: string): { amps?: number } {
  const min = c.border.devices.get(`${part}/${device}`)?.device.minA
  return typeof min === 'number' ? { amps: -min } : {}
}
