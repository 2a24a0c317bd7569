import type { PartId } from '../model/design'
import type { Answer, WorstCase } from './answers'
import type { Border } from './network'
import { assumedIn, type Solved, type State, witnessLines } from './solved'
import { barThrough } from './through'
import { worse } from './worst'

/** Greatest current through every bar, over all positions of the contacts; a bar is a part whose terminals are one node. */
export function barsOf(border: Border, states: readonly State[]): Map<PartId, Answer<WorstCase>> {
  const answers = new Map<PartId, Answer<WorstCase>>()
  for (const [part, terminal] of border.bars) {
    const worst = states.map(({ any }) => throughOf(any, terminal))
    answers.set(part, worst.reduce(worse))
  }
  return answers
}

function throughOf(s: Solved, terminal: string): Answer<WorstCase> {
  const id = s.border.nodeOf.get(terminal)
  const node = id === undefined ? undefined : s.p.nodeIndex.get(id)
  if (node === undefined) return { value: { amps: 0, witness: [] } }
  const { start, edge } = s.p.graph
  for (let i = start[node]!; i < start[node + 1]!; i++) {
    const block = s.envelope.block[edge[i]!]!
    const conductors = block >= 0 ? assumedIn(s, block) : []
    if (conductors.length > 0) return { notChecked: 'missing-run', parts: [], conductors }
  }
  const through = barThrough(s.p, s.envelope, node)
  if ('notChecked' in through) return { notChecked: through.notChecked, parts: [], conductors: [] }
  return { value: { amps: through.max, witness: witnessLines(s.border, through.witness) } }
}
