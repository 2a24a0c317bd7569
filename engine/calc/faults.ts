import type { Conductor, ConductorId, Design, TerminalRef } from '../model/design'
import { above, fromNumber } from '../units'
import type { Answer, NotChecked } from './answers'
import { breakingCurrents, MOST_TRIALS } from './breaking'
import { nodeFaults } from './fault'
import type { DeviceFault, EndFault, FaultAnswers } from './faultanswers'
import { agreed, type FaultNetworks, faultNetworks, known, runEnds } from './faultcases'
import { GREATEST } from './faultsystem'
import { fuseFacts } from './fusefacts'
import { leastFaults } from './leastfaults'
import type { State } from './solved'

/**
 * Fault currents of a design: at both ends of every conductor that is no return, and through every fuse and
 * breaker, over all positions of the contacts. Greatest: kernels of nodeFaults and breakingCurrents. Cost: per position
 * two factorisations, a response for each conductor end, and the pairs that breakingCurrents tries.
 */
export function faultsOf(design: Design, states: readonly State[]): Omit<FaultAnswers, 'starts'> {
  const networks = states.map(faultNetworks)
  const least = leastFaults(design, networks, fuseFacts(design, states[0]!.any.border))
  const greatest = networks.map(greatestAtNodes)
  const runs = new Map<ConductorId, { from: EndFault; to: EndFault }>()
  for (const c of states[0]!.any.border.conductors.values()) {
    const at = (end: 'from' | 'to'): EndFault | null => {
      const most = worstAt(greatest.map((of) => of(c, end)))
      return most === null ? null : { greatest: most, ...least(c, end) }
    }
    const [from, to] = [at('from'), at('to')]
    if (from && to) runs.set(c.id, { from, to })
  }
  return { runs, devices: devicesOf(networks) }
}

/** The greatest over all positions; an answer missing in one is missing. Null: a return. */
function worstAt(answers: readonly (EndFault['greatest'] | null)[]): EndFault['greatest'] | null {
  let worst: EndFault['greatest'] | null = null
  for (const answer of answers) {
    if (answer === null) continue
    if ('notChecked' in answer) return answer
    if (worst === null || above(answer.value, 'value' in worst ? worst.value : 0)) worst = answer
  }
  return worst
}

type AtEnd = (c: Conductor, end: 'from' | 'to') => EndFault['greatest'] | null

function greatestAtNodes({ state, feeding, gap }: FaultNetworks): AtEnd {
  const all = feeding.map((p) => known(nodeFaults(p, GREATEST)))
  return (c, end) => {
    const [u, v] = runEnds(state.any.p, c.id)
    const node = end === 'from' ? u : v
    if (node === -1) return null
    const figures = all.map((faults) => faults.amps[node]!)
    const amps = agreed(figures)
    if (amps === undefined) return gap(figures)
    return Number.isNaN(amps) ? null : { value: fromNumber(amps) }
  }
}

/** Trials of breakingCurrents over all positions of the contacts, some seconds' work at most. */
const MOST_IN_ALL = 3e9

/** `mostInAll`: with more to try than that over all positions, currents through devices are not checked. */
export function devicesOf(
  networks: readonly FaultNetworks[],
  mostInAll = MOST_IN_ALL,
): Map<string, DeviceFault> {
  const devices = new Map<string, DeviceFault>()
  for (const network of networks) {
    const { border, p } = network.state.any
    const answerOf = breakingIn(network, mostInAll / networks.length)
    for (const [id, { part, branch }] of border.branches) {
      const e = p.branchIndex.get(id)
      if (branch.kind !== 'fuse' || e === undefined) continue
      const before = devices.get(id)?.greatest
      if (before && 'notChecked' in before) continue
      const greatest = answerOf(e)
      if (before && 'value' in greatest && !above(greatest.value.amps, before.value.amps)) continue
      devices.set(id, { part, key: branch.key, greatest })
    }
  }
  return devices
}

function breakingIn(
  { state, feeding, gap }: FaultNetworks,
  mostTrials: number,
): (branch: number) => DeviceFault['greatest'] {
  const all = feeding.map((p) => known(breakingCurrents(p, GREATEST, Math.min(MOST_TRIALS, mostTrials))))
  const placeOf = (node: number): TerminalRef | null => terminalOf(feeding[0]!.form.nodes[node])
  return (e): Answer<{ amps: number | 'unlimited' } & Place> => {
    const figures = all.map((currents) => currents.amps[e]!)
    const amps = agreed(figures)
    if (amps === undefined) return gap(figures)
    const first = all[0]!
    if (!first.everyPair && mostTrials < MOST_TRIALS) return tooMany(state, e)
    return {
      value: {
        amps: fromNumber(amps),
        at: placeOf(first.at[e]!),
        to: placeOf(first.to[e]!),
        everyPair: first.everyPair,
      },
    }
  }
}

/** Not every pair of nodes was tried, and that for the number of positions. */
function tooMany({ any: { border, p } }: State, e: number): NotChecked {
  const { part } = border.branches.get(p.form.branches[e]!.id)!
  return { notChecked: 'too-many-positions', parts: [part], conductors: [] }
}

type Place = Pick<Extract<DeviceFault['greatest'], { value: unknown }>['value'], 'at' | 'to' | 'everyPair'>

/** A node is named after one of its terminals; the frame is none. No id of a part holds a slash. */
function terminalOf(node: string | undefined): TerminalRef | null {
  const slash = node?.indexOf('/') ?? -1
  return node === undefined || slash < 0
    ? null
    : { part: node.slice(0, slash), terminal: node.slice(slash + 1) }
}
