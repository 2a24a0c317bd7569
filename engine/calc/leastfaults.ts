import type { Conductor, Design } from '../model/design'
import { clearsBy } from '../tables/fuseband'
import type { Amps } from '../units'
import type { Answer, NotChecked } from './answers'
import { besideOf } from './beside'
import type { Clearing, EndFault } from './faultanswers'
import { agreed, type FaultNetworks, known, runEnds } from './faultcases'
import { faultSystem, LEAST } from './faultsystem'
import type { FuseFacts } from './fusefacts'
import { shortTo } from './shortto'

type LeastFault = Pick<EndFault, 'least' | 'clearing'>

/** Share of a short circuit below which a device is not in its way. */
const IN_THE_WAY = 0.01

/**
 * The least short circuit at an end of a conductor over all positions of the contacts that feed it, and how the devices
 * that guard the conductor from its other end clear it. Prepared once a position; one solve an end.
 */
export function leastFaults(
  design: Design,
  networks: readonly FaultNetworks[],
  facts: ReadonlyMap<string, FuseFacts>,
): (c: Conductor, end: 'from' | 'to') => LeastFault {
  const positions = networks.map((n) => ({
    ...n,
    systems: n.batteriesOnly.map((p) => known(faultSystem(p, LEAST))),
    beside: besideOf(design, n.state.any.border, n.state.any.p),
  }))
  return (c, end) => {
    let least: Answer<Amps> = { value: 0 }
    const clearing = new Map<string, Clearing>()
    for (const { state, systems, beside, gap } of positions) {
      const [u, v] = runEnds(state.any.p, c.id)
      if (u === -1) continue
      const node = end === 'from' ? u : v
      const shorts = systems.map((s) => shortTo(s, node, beside(c, end)))
      const figures = shorts.map((x) => x.amps)
      const amps = agreed(figures)
      if (amps === undefined) return { least: gap(figures), clearing: [] }
      if (amps === 0) continue
      if ('value' in least && (least.value === 0 || amps < least.value)) least = { value: amps }

      const e = state.any.p.branchIndex.get(c.id)!
      const cut = state.any.protection.end(e, end === 'from' ? 'to' : 'from')
      if (!('cut' in cut)) continue
      const runAmps = Math.abs(shorts[0]!.through(e))
      for (const { id, kind } of cut.cut) {
        const guard = state.any.p.branchIndex.get(id)
        const of = facts.get(id)
        if (kind !== 'fuse' || guard === undefined || !of) continue
        const currents = shorts.map((x) => Math.abs(x.through(guard)))
        const through = agreed(currents)
        if (through === undefined) return { least: gap(currents), clearing: [] }
        if (through < IN_THE_WAY * amps) continue
        const before = clearing.get(id)
        if (before && before.amps <= through) continue
        clearing.set(id, {
          part: of.part,
          key: of.key,
          amps: through,
          runAmps,
          within: withinOf(of, through),
        })
      }
    }
    return { least, clearing: [...clearing.values()] }
  }
}

function withinOf(of: FuseFacts, amps: Amps): Clearing['within'] {
  if (of.band) return { value: clearsBy(of.band, amps) }
  const gap: NotChecked = {
    notChecked: of.ratingA === null ? 'missing-rating' : 'operating-times-unknown',
    parts: [of.part],
    conductors: [],
  }
  return gap
}
