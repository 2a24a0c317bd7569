import type { Design, Part, PartId, TerminalRef } from '../model/design'
import type { PartDevice } from '../model/kind'
import { conductorsAt, partById } from '../model/lookup'
import { netsOf } from './nets'

/** A conductor between a feed and a consumer (or a charger), told from its two ends whichever way it was drawn. */
export interface Fed {
  readonly feed: TerminalRef
  /** The consumer's positive terminal. */
  readonly consumer: TerminalRef
  /** Its negative terminal, to which nothing is joined yet. */
  readonly negative: TerminalRef
  /** The consumer also charges: its return belongs on the battery side of a load-side shunt. */
  readonly charges: boolean
}

/** The feed that a join would make; null where it feeds nothing, or the consumer has its return already. */
export function feedOf(design: Design, from: TerminalRef, to: TerminalRef): Fed | null {
  return fedAt(design, from, to) ?? fedAt(design, to, from)
}

function fedAt(design: Design, feed: TerminalRef, consumer: TerminalRef): Fed | null {
  if (feed.part === consumer.part || isConsumer(design, feed)) return null
  const device = consumerAt(design, consumer)
  const part = partById(design, consumer.part)
  if (!device || !part) return null
  const negative = { part: consumer.part, terminal: device.negative }
  return conductorsAt(design, consumer.part, device.negative).length > 0
    ? null
    : { feed, consumer, negative, charges: charges(design, part) }
}

const isConsumer = (design: Design, t: TerminalRef): boolean => consumerAt(design, t) !== undefined

/** The consumer with its positive terminal here. */
const consumerAt = (design: Design, t: TerminalRef): PartDevice | undefined =>
  consumersIn(design, t.part).find((d) => d.positive === t.terminal)

/**
 * The devices of a part that hang on a feed with a return of their own: loads, inputs of converters, and what
 * charges. PV arrays and alternators are feeds themselves; a step-down converter's output begins circuits of its own.
 */
export const consumersIn = (design: Design, part: PartId): readonly PartDevice[] =>
  devicesOf(design, part).filter((d) => {
    if (d.role === 'source') return !FEEDS.includes(partById(design, part)?.kind ?? '')
    return d.role !== 'battery'
  })

const devicesOf = (design: Design, part: PartId) => netsOf(design).electrical(part)?.devices ?? []

/** Does a part also give current into the system? What a step-down converter gives goes to circuits of its own. */
export const charges = (design: Design, part: Part): boolean =>
  part.kind !== STEP_DOWN &&
  devicesOf(design, part.id).some((d) => d.role === 'source' || d.role === 'two-way')

const STEP_DOWN = 'step-down'
const FEEDS: readonly string[] = ['pv-array', 'alternator', STEP_DOWN]
