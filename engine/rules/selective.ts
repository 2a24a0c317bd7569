import { type FuseFacts, fuseFacts } from '../calc/fusefacts'
import { upstreamOf } from '../calc/upstream'
import type { SourceKey } from '../sources'
import { clearsBy, holdsAtLeast } from '../tables/fuseband'
import type { Amps } from '../units'
import type { Finding } from './finding'
import { type Case, found, type Rule } from './rule'

/** gG fuse-links: the upstream one is rated at least 1.6 times the other (published guidance to gG fuses). */
const GG_RATIO = 1.6

interface Pair {
  readonly lower: FuseFacts
  readonly upper: FuseFacts
  /** A from which the upper device may open first; null: known by the ratio of ratings alone. */
  readonly fromA: Amps | null
  readonly source: SourceKey
}

/**
 * K6: a fault behind one device may open the next one up as well, and take the other circuits with it. Judged for two gG
 * links by their published ratio, for other classes by their bands as far as these are known. What does not overlap
 * there is not thereby selective, and nothing is claimed of it. One finding for each device or block.
 */
export const selective: Rule = {
  id: 'K6',
  looksFor: 'devices in line whose operating times overlap',
  check: (c) => {
    const facts = fuseFacts(c.design, c.border)
    const upstream = upstreamOf(c.p)
    const pairs = new Map<string, Pair[]>()
    for (const [id, lower] of facts) {
      const e = c.p.branchIndex.get(id)
      if (e === undefined) continue
      for (const b of upstream(e)) {
        const upper = facts.get(c.p.form.branches[b]!.id)
        const pair = upper && upper.part !== lower.part ? judge(c, id, lower, upper) : null
        if (!pair) continue
        const key = lower.part
        pairs.set(key, [...(pairs.get(key) ?? []), pair])
      }
    }
    return [...pairs.values()].map(findingOf)
  },
}

function judge(c: Case, id: string, lower: FuseFacts, upper: FuseFacts): Pair | null {
  if (lower.ratingA === null || upper.ratingA === null) return null
  if (lower.class === 'gg' && upper.class === 'gg')
    return upper.ratingA >= GG_RATIO * lower.ratingA * (1 - 1e-9)
      ? null
      : { lower, upper, fromA: null, source: 'gg-selectivity' }
  const most = c.answers.faults.devices.get(id)?.greatest
  if (!lower.band || !upper.band || !most || !('value' in most)) return null
  const ceiling =
    most.value.amps === 'unlimited' || !most.value.everyPair ? Number.POSITIVE_INFINITY : most.value.amps
  const last = upper.band.gates[upper.band.gates.length - 1]!.amps
  const currents = [...lower.band.gates, ...upper.band.gates]
    .flatMap((g) => [g.amps * (1 - 1e-9), g.amps])
    .filter((amps) => amps >= upper.ratingA! && amps <= Math.min(last, ceiling))
    .sort((a, b) => a - b)
  const fromA = currents.find((amps) => {
    const holds = holdsAtLeast(upper.band!, amps)
    return holds > 0 && (clearsBy(lower.band!, amps) ?? Number.POSITIVE_INFINITY) > holds
  })
  return fromA === undefined ? null : { lower, upper, fromA, source: upper.band.source }
}

function findingOf(pairs: readonly Pair[]): Finding {
  const { lower, source } = pairs[0]!
  const uppers = [...new Set(pairs.map((p) => p.upper))]
  const from = pairs.flatMap((p) => (p.fromA === null ? [] : [p.fromA]))
  const named = (all: readonly FuseFacts[]): string[] => [
    ...new Set(all.map((of) => of.name).filter((name) => name !== '')),
  ]
  return found(
    'K6',
    'note',
    source,
    { parts: [...new Set([lower.part, ...uppers.map((of) => of.part)])] },
    {
      lower: lower.part,
      ways: named(pairs.map((p) => p.lower)),
      uppers: [...new Set(uppers.map((of) => of.part))],
      upperWays: named(uppers),
      upperA: Math.min(...uppers.map((of) => of.ratingA ?? 0)),
      lowerA: Math.max(...pairs.map((p) => p.lower.ratingA ?? 0)),
      ...(from.length === 0 ? {} : { fromA: Math.min(...from) }),
    },
  )
}
