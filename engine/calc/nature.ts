import { keyOf } from '../edit/nets'
import type { Conductor } from '../model/design'
import type { Pole } from '../model/kind'
import type { RunAnswer } from './answers'
import type { Prepared } from './prepare'

type Nature = RunAnswer['nature']

/** What each conductor is part of: a net that holds only positive, or only negative, terminals of devices, or neither. */
export function natures(p: Prepared, poles: ReadonlyMap<string, Pole>): (c: Conductor) => Nature {
  const holdsPositive = new Uint8Array(p.netCount)
  const holdsNegative = new Uint8Array(p.netCount)
  p.positive.forEach((v) => {
    holdsPositive[p.net[v]!] = 1
  })
  p.negative.forEach((v) => {
    holdsNegative[p.net[v]!] = 1
  })
  return (c) => {
    const ends = [poles.get(keyOf(c.from)), poles.get(keyOf(c.to))]
    if (ends.includes('data')) return 'data'
    if (ends.includes('mains')) return 'mains'
    if (ends.includes('sense')) return 'other'
    const e = p.branchIndex.get(c.id)
    if (e === undefined) return 'other'
    const net = p.net[p.graph.tail[e]!]!
    if (holdsPositive[net] && !holdsNegative[net]) return 'positive'
    if (holdsNegative[net] && !holdsPositive[net]) return 'negative'
    if (!holdsPositive[net] && ends.includes('negative')) return 'negative'
    return !holdsNegative[net] && ends.includes('positive') ? 'positive' : 'other'
  }
}
