import { type EndFlows, endFlows } from '../math/endflow'
import type { Amps, Unlimited } from '../units'
import { circleFrom, sourceOrder } from './above'
import { type Ahead, type LengthOf, lengthAhead } from './ahead'
import { type FeedNet, feedNet } from './feednet'
import { byNet, sameFlow, withMissing } from './netgraph'
import type { Prepared } from './prepare'
import { unlimitedWay, unratedReached } from './way'

/** What limits a flow: a fuse by its rating, a source by its fault current, a device run backwards by its intake. */
export interface CutMember {
  readonly kind: 'fuse' | 'source' | 'intake'
  readonly id: string
  readonly amps: Amps
}

export type ProtectionGap =
  /** Sources stand in a circle, so no net is the lower one: a reversed battery, or a source inside one net. */
  | { readonly code: 'source-cycle'; readonly devices: readonly string[] }
  /** The answer depends on the rating of a fuse that has none. */
  | { readonly code: 'missing-rating'; readonly fuses: readonly string[] }
  | { readonly code: 'not-a-conductor' }

export type EndProtection =
  /** The cut nearest the end; its amps add up to the flow. Empty where nothing can come. */
  | { readonly flow: Amps; readonly cut: readonly CutMember[] }
  /** Branches of one way that meets no limit, source first, and the device that feeds it. */
  | { readonly flow: Unlimited; readonly path: readonly string[]; readonly source: string }
  | { readonly notChecked: ProtectionGap }

export interface ProtectionResult {
  /** A per branch: Infinity unlimited, NaN not checked (or no conductor). */
  readonly intoFrom: Float64Array
  readonly intoTo: Float64Array
  /** Names the cut or the way of one end when asked; kept then. */
  end(branch: number, end: 'from' | 'to'): EndProtection
  /** How far an unprotected end is from its sources and from a device; null where the end is not unlimited. */
  ahead(branch: number, end: 'from' | 'to', lengthM: LengthOf): Ahead | null
}

/**
 * For both ends of every conductor, the greatest sustained current that can come out of the rest of the network
 * into that end with no protective device above its rating. Parallel paths may share as they like: equal or
 * resistive sharing is not relied on. Contacts and shunts do not limit. A fuse without a rating is tried at 0 and
 * at no limit; where that makes no difference the answer stands. O(n + m) per net plus the flows of meshed parts.
 */
export function protection(p: Prepared): ProtectionResult {
  const m = p.graph.edgeCount
  const intoFrom = new Float64Array(m).fill(Number.NaN)
  const intoTo = new Float64Array(m).fill(Number.NaN)
  const order = sourceOrder(p)
  const content = byNet(p)
  const solved = new Map<number, SolvedNet>()
  /** Edge of each conductor in the network of its own net. */
  const edgeOf = new Int32Array(m).fill(-1)
  for (let net = 0; net < p.netCount; net++) {
    const conductors = content.branches[net]!.filter((e) => p.form.branches[e]!.kind === 'conductor')
    if (conductors.length === 0 || order.circling[net] === 1) continue
    const feed = feedNet(p, order, content, net)
    const flows = solve(feed)
    solved.set(net, { feed, ...flows })
    feed.branch.forEach((e, i) => {
      if (e === -1 || p.net[p.graph.tail[e]!] !== net || p.form.branches[e]!.kind !== 'conductor') return
      edgeOf[e] = i
      intoFrom[e] = agreed(flows, i, 'tail')
      intoTo[e] = agreed(flows, i, 'head')
    })
  }

  const told = new Map<number, EndProtection>()
  const placeOf = (branch: number, end: 'from' | 'to') => {
    const feed = solved.get(p.net[p.graph.tail[branch]!]!)?.feed
    return feed && ({ feed, edge: edgeOf[branch]!, side: end === 'from' ? 'tail' : 'head' } as const)
  }
  return {
    intoFrom,
    intoTo,
    ahead(branch, end, lengthM) {
      const place = placeOf(branch, end)
      const flow = (end === 'from' ? intoFrom : intoTo)[branch]
      if (!place || flow !== Number.POSITIVE_INFINITY) return null
      return lengthAhead(p, place.feed, place.edge, place.side, lengthM)
    },
    end(branch, end) {
      const key = end === 'from' ? branch : -branch - 1
      const known = told.get(key) ?? protectionAt(branch, end)
      told.set(key, known)
      return known
    },
  }

  function protectionAt(branch: number, end: 'from' | 'to'): EndProtection {
    if (p.form.branches[branch]?.kind !== 'conductor') return { notChecked: { code: 'not-a-conductor' } }
    const net = p.net[p.graph.tail[branch]!]!
    const here = solved.get(net)
    if (!here) {
      const devices = circleFrom(order, net).map((d) => p.form.devices[d]!.id)
      return { notChecked: { code: 'source-cycle', devices } }
    }
    const edge = edgeOf[branch]!
    const side = end === 'from' ? 'tail' : 'head'
    const flow = (end === 'from' ? intoFrom : intoTo)[branch]!
    if (Number.isNaN(flow)) {
      const fuses = unratedReached(here.feed, edge, side).map((e) => p.form.branches[e]!.id)
      return { notChecked: { code: 'missing-rating', fuses } }
    }
    if (flow === Number.POSITIVE_INFINITY) {
      const way = unlimitedWay(here.feed, edge, side)!
      return {
        flow: 'unlimited',
        path: way.branches.map((e) => p.form.branches[e]!.id),
        source: p.form.devices[way.device]!.id,
      }
    }
    return { flow, cut: named(p, here.feed, here.open.cut(edge, side)) }
  }
}

interface Solved {
  /** With unrated fuses without limit, and at 0; the same where every fuse has a rating. */
  readonly open: EndFlows
  readonly shut: EndFlows
}

interface SolvedNet extends Solved {
  readonly feed: FeedNet
}

function solve(feed: FeedNet): Solved {
  const { graph, supply } = feed
  const at = (missing: number): EndFlows =>
    endFlows({
      graph,
      supply,
      forward: withMissing(feed.forward, missing),
      backward: withMissing(feed.backward, missing),
    })
  const open = at(Number.POSITIVE_INFINITY)
  return { open, shut: feed.forward.some(Number.isNaN) ? at(0) : open }
}

/** The flow where both agree, NaN where it hangs on a missing rating. */
function agreed(s: Solved, edge: number, end: 'tail' | 'head'): number {
  const most = s.open.into(edge, end)
  if (s.open === s.shut) return most
  const least = s.shut.into(edge, end)
  return sameFlow(least, most) ? most : Number.NaN
}

function named(p: Prepared, feed: FeedNet, cut: ReturnType<EndFlows['cut']>): CutMember[] {
  const members: CutMember[] = []
  for (const { edge, towards } of cut.edges) {
    const branch = feed.branch[edge]!
    const amps = (towards === 'head' ? feed.forward : feed.backward)[edge]!
    if (branch !== -1) members.push({ kind: 'fuse', id: p.form.branches[branch]!.id, amps })
    else members.push(member(p, feed.device[edge]!, amps, towards === 'tail'))
  }
  for (const v of cut.vertices)
    for (const s of feed.supplied.get(v)!) members.push(member(p, s.device, s.amps, s.backwards))
  return members
}

function member(p: Prepared, device: number, amps: Amps, backwards: boolean): CutMember {
  return { kind: backwards ? 'intake' : 'source', id: p.form.devices[device]!.id, amps }
}
