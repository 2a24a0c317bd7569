import type { Answers } from '../calc/answers'
import { type Nets, netsOf } from '../edit/nets'
import type { Conductor, Design } from '../model/design'
import type { SceneConductor } from './scene'

export type Nature = SceneConductor['nature']

/** What each conductor carries: from the answers where there are some, otherwise from the nets. O(1) each after the first. */
export function natureIn(design: Design, answers: Answers | null): (c: Conductor) => Nature {
  const nets = netsOf(design)
  return (c) => answers?.runs.get(c.id)?.nature ?? fromNets(nets, c)
}

function fromNets(nets: Nets, c: Conductor): Nature {
  const poles = [nets.terminal(c.from)?.pole, nets.terminal(c.to)?.pole]
  if (poles.includes('data')) return 'data'
  if (poles.includes('mains')) return 'mains'
  const net = nets.netOf(c.from)
  const [positive, negative] = [nets.positives(net).length > 0, nets.negatives(net).length > 0]
  return positive === negative ? 'other' : positive ? 'positive' : 'negative'
}
