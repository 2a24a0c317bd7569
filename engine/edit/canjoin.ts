import type { ConductorId, Design, TerminalRef } from '../model/design'
import type { Pole } from '../model/kind'
import { conductorById, conductorsAt, partById } from '../model/lookup'
import { polesClash } from './clash'
import type { Refusal } from './edit'
import { netsOf } from './nets'
import { refuse } from './refuse'
import { terminalsIn } from './terminal'

export interface JoinOptions {
  /** A second conductor between the same terminals is meant. */
  readonly parallel?: boolean
}

/** Why two terminals cannot be joined, or null. The first call for a design is O(design), each further one O(devices). */
export function canJoin(
  design: Design,
  from: TerminalRef,
  to: TerminalRef,
  o: JoinOptions = {},
): Refusal | null {
  return (
    missing(design, from) ??
    missing(design, to) ??
    same(from, to) ??
    carries(design, from, to) ??
    sameNode(design, from, to) ??
    (o.parallel ? null : alreadyJoined(design, from, to)) ??
    full(design, from) ??
    full(design, to) ??
    polesClash(design, from, to)
  )
}

/** Why one end of a conductor cannot be taken to another terminal, or null. */
export function canReconnect(
  design: Design,
  id: ConductorId,
  end: 'from' | 'to',
  to: TerminalRef,
): Refusal | null {
  const conductor = conductorById(design, id)
  if (!conductor) return refuse('no-conductor', `There is no conductor ${id}.`)
  const without = { ...design, conductors: design.conductors.filter((c) => c.id !== id) }
  return canJoin(without, to, end === 'from' ? conductor.to : conductor.from, { parallel: true })
}

const nameOf = (design: Design, t: TerminalRef): string => {
  const terminal = netsOf(design).terminal(t)
  const part = partById(design, t.part)?.designation ?? t.part
  return terminal && terminal.name !== '' ? `${part} ${terminal.name}` : `${part} ${t.terminal}`
}

function missing(design: Design, t: TerminalRef): Refusal | null {
  const part = partById(design, t.part)
  if (!part) return refuse('no-part', 'This end is on a part that is not in the design.')
  const terminals = terminalsIn(part)
  if (!terminals)
    return refuse(
      'unknown-kind',
      `${part.designation} is of a kind that this version does not know; nothing joins it.`,
    )
  return terminals.some((x) => x.key === t.terminal)
    ? null
    : refuse('no-terminal', `${part.designation} has no terminal "${t.terminal}".`)
}

function same(from: TerminalRef, to: TerminalRef): Refusal | null {
  return from.part === to.part && from.terminal === to.terminal
    ? refuse('same-terminal', 'Both ends are the same terminal.')
    : null
}

type Trade = 'power' | 'sense' | 'data' | 'mains'

const TRADE: Readonly<Record<Pole, Trade>> = {
  positive: 'power',
  negative: 'power',
  any: 'power',
  sense: 'sense',
  data: 'data',
  mains: 'mains',
}

function carries(design: Design, from: TerminalRef, to: TerminalRef): Refusal | null {
  const nets = netsOf(design)
  const a = TRADE[nets.terminal(from)!.pole]
  const b = TRADE[nets.terminal(to)!.pole]
  if (a === b) return null
  if (a === 'mains' || b === 'mains')
    return refuse(
      'mains',
      'Mains joins mains only; it stays apart from everything of the extra-low-voltage system.',
    )
  if (a === 'data' || b === 'data')
    return refuse('data', 'A data port joins another data port only; it carries no supply current.')
  // Left: a sense lead on a power terminal, which is how a voltage is measured.
  return null
}

function sameNode(design: Design, from: TerminalRef, to: TerminalRef): Refusal | null {
  if (from.part !== to.part) return null
  const merges = netsOf(design).electrical(from.part)?.merges ?? []
  return merges.some((group) => group.includes(from.terminal) && group.includes(to.terminal))
    ? refuse('same-bar', `Both ends are on the same bar of ${partById(design, from.part)!.designation}.`)
    : null
}

function alreadyJoined(design: Design, from: TerminalRef, to: TerminalRef): Refusal | null {
  const other = conductorsAt(design, from.part, from.terminal).find((c) =>
    [c.from, c.to].some((t) => t.part === to.part && t.terminal === to.terminal),
  )
  return other
    ? refuse(
        'already-joined',
        `${other.number} joins these two already; a second one beside it must be asked for.`,
      )
    : null
}

function full(design: Design, t: TerminalRef): Refusal | null {
  const takes = netsOf(design).terminal(t)?.takes
  if (takes === undefined) return null
  const there = conductorsAt(design, t.part, t.terminal)
  if (there.length < takes) return null
  const room = takes === 1 ? 'one conductor' : `${takes} conductors`
  return refuse(
    'full',
    `${nameOf(design, t)} takes ${room} and has ${there.map((c) => c.number).join(', ')}.`,
  )
}
