import { blocksOf } from '../math/blocks'
import { meshCurrents } from '../math/meshcurrents'
import { fromNumber, type MaybeUnlimited } from '../units'
import type { BridgeFlow, Sense } from './bridgeflow'
import { bridgeReturns } from './bridgereturn'
import { meshReturns, type ProgramGap } from './meshreturn'
import { byNet, capacityOf, sameFlow, together } from './netgraph'
import type { Prepared } from './prepare'
import type { CutMember } from './protection'
import { worstShort } from './singleshort'

export type ReturnGap =
  | ProgramGap
  | { readonly code: 'not-a-return' }
  | { readonly code: 'missing-rating'; readonly fuses: readonly string[] }

export type Sustained =
  /** The greater of both senses; `limiting` is empty when unlimited or when no current can flow. */
  | { readonly sustained: MaybeUnlimited; readonly sense: Sense; readonly limiting: readonly CutMember[] }
  | { readonly notChecked: ReturnGap }

/** A short across the terminals of one device, and what it puts through a return for ever. */
export type SingleShort =
  | { readonly amps: MaybeUnlimited; readonly device: string }
  /** No short of one device puts anything through it. */
  | { readonly amps: 0 }
  | { readonly notChecked: ReturnGap }

export interface ReturnsResult {
  /** 1 for the conductors of every net that holds the negative terminal of a device. */
  readonly isReturn: Uint8Array
  /** Largest lasting current of a return in any state that blows no fuse. Kept once asked. */
  sustained(branch: number): Sustained
  /** The worst short of one device, to explain the figure above; costs several flows a device, kept once asked. */
  singleShort(branch: number): SingleShort
}

/**
 * What limits a return is the fuses on the positive side, so the whole loop counts. A bridge of its net is a flow
 * round the loop; a conductor of a meshed part is a linear program at the given resistances. A fuse without a
 * rating is tried at 0 and at no limit; where that makes no difference the answer stands.
 */
export function returns(p: Prepared): ReturnsResult {
  const blocks = blocksOf(p.graph)
  const mesh = meshCurrents(p.graph, blocks, p.resistance)
  const content = byNet(p)
  const holds = new Uint8Array(p.netCount)
  for (const v of p.negative) holds[p.net[v]!] = 1
  const isReturn = Uint8Array.from(p.form.branches, (b, e) =>
    b.kind === 'conductor' && holds[p.net[p.graph.tail[e]!]!] === 1 ? 1 : 0,
  )
  const isUnrated = (e: number): boolean => Number.isNaN(capacityOf(p, e))
  const unrated = p.form.branches.some((_, e) => isUnrated(e))
  const bridges = kept((net: number) => bridgeReturns(p, blocks, content, net))
  const meshes = kept((net: number) => meshReturns(p, blocks, mesh, content, net))
  const answer = kept(sustained)
  return { isReturn, sustained: answer, singleShort: kept(singleShort) }

  function sustained(branch: number): Sustained {
    if (isReturn[branch] !== 1) return { notChecked: { code: 'not-a-return' } }
    if (p.graph.tail[branch] === p.graph.head[branch]) return { sustained: 0, sense: 'forward', limiting: [] }
    const net = p.net[p.graph.tail[branch]!]!
    const most = greater(branch, net, Number.POSITIVE_INFINITY)
    if ('gap' in most) return { notChecked: most.gap }
    if (unrated) {
      const least = greater(branch, net, 0)
      if ('gap' in least) return { notChecked: least.gap }
      if (!sameFlow(least.amps, most.amps)) return missingRating(net)
    }
    return {
      sustained: fromNumber(most.amps),
      sense: most.sense,
      get limiting() {
        return most.amps > 0 && most.amps < Number.POSITIVE_INFINITY ? most.limiting() : []
      },
    }
  }

  function singleShort(branch: number): SingleShort {
    if (isReturn[branch] !== 1) return { notChecked: { code: 'not-a-return' } }
    if (p.graph.tail[branch] === p.graph.head[branch]) return { amps: 0 }
    const worst = worstShort(p, blocks, content, branch, Number.POSITIVE_INFINITY)
    if (unrated && !sameFlow(worstShort(p, blocks, content, branch, 0).amps, worst.amps))
      return missingRating(p.net[p.graph.tail[branch]!]!)
    if (worst.device === -1) return { amps: 0 }
    return { amps: fromNumber(worst.amps), device: p.form.devices[worst.device]!.id }
  }

  function missingRating(net: number): { readonly notChecked: ReturnGap } {
    const fuses = together(p, content, net, () => false)
      .nets.flatMap((k) => content.branches[k]!)
      .filter(isUnrated)
      .map((e) => p.form.branches[e]!.id)
    return { notChecked: { code: 'missing-rating', fuses } }
  }

  function greater(
    branch: number,
    net: number,
    missing: number,
  ): (BridgeFlow & { sense: Sense }) | { readonly gap: ProgramGap } {
    const solver = blocks.of[branch]! >= 0 ? meshes(net) : bridges(net)
    const forward = solver.flow(branch, 'forward', missing)
    if ('gap' in forward) return forward
    const backward = solver.flow(branch, 'backward', missing)
    if ('gap' in backward) return backward
    return forward.amps >= backward.amps
      ? { ...forward, sense: 'forward' }
      : { ...backward, sense: 'backward' }
  }
}

/** The same answer for the same number, worked out once. */
function kept<T>(work: (key: number) => T): (key: number) => T {
  const known = new Map<number, T>()
  return (key) => {
    if (!known.has(key)) known.set(key, work(key))
    return known.get(key)!
  }
}
