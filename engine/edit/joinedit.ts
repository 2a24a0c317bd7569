import type { Conductor, Design, TerminalRef } from '../model/design'
import { namingFor } from '../model/naming'
import { newConductor } from '../model/newdesign'
import { ruleSetOf } from '../model/rules'
import { canJoin, type JoinOptions } from './canjoin'
import type { EditOf, Refusal } from './edit'
import { feedOf } from './feed'
import { type Nets, netsOf } from './nets'
import { returnWay } from './returnway'

/** A join as data, and in `why` one sentence on what became of the return; empty where none was called for. */
export type JoinEdit = (EditOf<'join'> | EditOf<'all'>) & { readonly why: string }

/**
 * The edit for a conductor drawn from one terminal to another. A feed to a load, or to the input of a converter,
 * makes its return in the same edit: from the load's negative terminal, if nothing is joined to it yet, to the
 * return bar that belongs to the feed. Colours are those of the rule set; sizes and lengths are left to be chosen.
 */
export function joinEdit(
  design: Design,
  from: TerminalRef,
  to: TerminalRef,
  options: JoinOptions = {},
): JoinEdit | Refusal {
  const refusal = canJoin(design, from, to, options)
  if (refusal) return refusal
  const naming = namingFor(design)
  const nets = netsOf(design)
  const make = (a: TerminalRef, b: TerminalRef): Conductor => {
    const conductor = newConductor(naming.conductorId(), naming.number(), a, b)
    return { ...conductor, colour: colourFor(design, nets, a, b) }
  }

  const fed = feedOf(design, from, to)
  if (!fed) return { do: 'join', conductor: make(from, to), why: '' }
  const feed = make(fed.feed, fed.consumer)
  const way = returnWay(design, fed)
  if (!way.to) return { do: 'join', conductor: feed, why: way.why }
  const withFeed = { ...design, conductors: [...design.conductors, feed] }
  const refused = canJoin(withFeed, fed.negative, way.to)
  if (refused) return { do: 'join', conductor: feed, why: `No return was drawn. ${refused.why}` }
  const back: Conductor = { ...make(fed.negative, way.to), returnOf: feed.id }
  return {
    do: 'all',
    edits: [
      { do: 'join', conductor: feed },
      { do: 'join', conductor: back },
    ],
    why: way.why,
  }
}

/** By what the two terminals carry, or by the net they join; black where nothing tells. */
function colourFor(design: Design, nets: Nets, a: TerminalRef, b: TerminalRef): string {
  const colours = ruleSetOf(design)?.colours
  if (!colours) return 'BK'
  const poles = [nets.terminal(a)?.pole, nets.terminal(b)?.pole]
  for (const pole of ['data', 'mains', 'sense', 'positive', 'negative'] as const)
    if (poles.includes(pole)) return colours[pole]
  const onPositive = [a, b].some((t) => nets.positives(nets.netOf(t)).length > 0)
  return onPositive ? colours.positive : colours.negative
}
