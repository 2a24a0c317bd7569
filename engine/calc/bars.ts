import type { PartId } from '../model/design'
import { withAtLeast } from './answer'
import type { Answer, WorstCase } from './answers'
import type { Border } from './network'
import { leaningOn, type Solved, type State, untriedAt, witnessLines } from './solved'
import { barThrough } from './through'
import { worse } from './worst'

/** Greatest current through every bar, over all positions of the contacts; a bar is a part whose terminals are one node. */
export function barsOf(border: Border, states: readonly State[]): Map<PartId, Answer<WorstCase>> {
  const answers = new Map<PartId, Answer<WorstCase>>()
  for (const [part, terminal] of border.bars) {
    const worst = states.flatMap((state) => (standsIn(state, terminal) ? [throughOf(state, terminal)] : []))
    answers.set(part, worst.reduce(worse))
  }
  return answers
}

/** Can more pass in this position than with every make contact closed? Only where the bar stands in the opened part. */
function standsIn({ opened }: State, terminal: string): boolean {
  if (opened === null) return true
  const node = nodeAt(opened.from, terminal)
  if (node === undefined) return false
  const { start, edge } = opened.from.p.graph
  for (let i = start[node]!; i < start[node + 1]!; i++)
    if (opened.from.envelope.block[edge[i]!] === opened.block) return true
  return false
}

function throughOf(state: State, terminal: string): Answer<WorstCase> {
  const { any, none } = state
  const node = nodeAt(any, terminal)
  if (node === undefined) return { value: { amps: 0, witness: [], unlimitedBy: [], shared: false } }
  const { start, edge } = any.p.graph
  let shared = false
  for (let i = start[node]!; i < start[node + 1]!; i++) {
    const block = any.envelope.block[edge[i]!]!
    const gap = leaningOn(any, block) ?? untriedAt(state, block)
    if (gap) return gap
    shared ||= block >= 0
  }
  const through = barThrough(any.p, any.envelope, node)
  if ('notChecked' in through) return { notChecked: through.notChecked, parts: [], conductors: [] }
  if (any !== none) {
    const without = barThrough(none.p, none.envelope, nodeAt(none, terminal)!)
    if ('notChecked' in without || !same(through.max, without.max)) {
      const gap = { notChecked: 'missing-figure', parts: unknownBehind(any), conductors: [] }
      return 'notChecked' in without ? gap : withAtLeast(gap, without.max)
    }
  }
  const { devices, ray } = through.witness
  return {
    value: {
      amps: through.max,
      witness: witnessLines(any.border, devices),
      unlimitedBy: [...new Set(witnessLines(any.border, ray).map((line) => line.part))],
      shared,
    },
  }
}

const same = (a: number | 'unlimited', b: number | 'unlimited'): boolean =>
  a === b || (a !== 'unlimited' && b !== 'unlimited' && Math.abs(a - b) <= 1e-9)

const unknownBehind = ({ border }: Solved): PartId[] => [
  ...new Set([...border.unknownDevices].flatMap((id) => border.devices.get(id)?.part ?? [])),
]

function nodeAt({ border, p }: Solved, terminal: string): number | undefined {
  const id = border.nodeOf.get(terminal)
  return id === undefined ? undefined : p.nodeIndex.get(id)
}
