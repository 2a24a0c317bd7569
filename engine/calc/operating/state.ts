import type { ConductorId, PartId } from '../../model/design'
import type { Amps, Volts, Watts } from '../../units'
import type { ChargeStage } from './charging'

/**
 * How a design is switched and used. What is not named is as it usually is: contacts closed, changeovers in their
 * position at rest, fuses in, loads at full use, sources resting, batteries full. Ids that a design does not have
 * are passed over.
 */
export interface OperatingState {
  /** Contacts that are open, `${part}/${branch}`. Of those that work by themselves: where they stood last. */
  readonly open: ReadonlySet<string>
  /** Position of each changeover, `${part}/${name}`. Of relays: where they stood last. */
  readonly throws: ReadonlyMap<string, string>
  /** Fuses taken out or blown, breakers off, `${part}/${branch}`. */
  readonly blown: ReadonlySet<string>
  /** Use of each load, `${part}/${device}`, 0 to 1 of full use. */
  readonly loads: ReadonlyMap<string, number>
  /** Sun on an array, or use of a source's full current, `${part}/${device}`, 0 to 1. */
  readonly sources: ReadonlyMap<string, number>
  /** State of charge of each battery, `${part}/${device}`, 0 to 1. */
  readonly charge: ReadonlyMap<string, number>
  /** Stage of each charger that has stages, `${part}/${device}`; not named: bulk. */
  readonly stages?: ReadonlyMap<string, ChargeStage>
}

export const NOTHING_SET: OperatingState = {
  open: new Set(),
  throws: new Map(),
  blown: new Set(),
  loads: new Map(),
  sources: new Map(),
  charge: new Map(),
}

/** One device at the operating point: what it delivers counts as positive, what it takes as negative. */
export interface DevicePoint {
  readonly amps: Amps
  /** From its positive to its negative terminal; 0 where nothing joins the two. */
  readonly volts: Volts
  readonly watts: Watts
}

export interface ShuntPoint {
  readonly shows: Amps
  /** What its role says it should show: what the loads of its circuit draw, or what the batteries give. */
  readonly truth: Amps
  /** `shows` − `truth`. */
  readonly off: Amps
}

/** Where the power goes: batteries + sources = loads + converters + ways, to rounding. W. */
export interface PowerBalance {
  /** Given by batteries; below 0 while they are charged. */
  readonly batteries: Watts
  /** Given by sources that are no converter. */
  readonly sources: Watts
  readonly loads: Watts
  /** Lost in converters. */
  readonly converters: Watts
  /** Lost in conductors, fuses, contacts and shunts. */
  readonly ways: Watts
}

export type OperatingNoteKind =
  /** No battery feeds these loads, however the contacts stand. */
  | 'no-battery-feeds'
  /** Wired the wrong way round; it draws nothing. */
  | 'reversed'
  /** Left out: a figure is missing. */
  | 'missing-figure'
  /** A typical internal resistance stands in for one that is not typed. */
  | 'typical-resistance'
  /** Resistance of these conductors stands in for a missing size or length. */
  | 'missing-run'
  /** Resistance of these contacts and fuses stands in for a missing rating. */
  | 'missing-rating'
  /** The voltage left for these devices is too low: taken as stopped. */
  | 'starved'
  /** A battery is charged with more than its limit. */
  | 'charge-limit'
  /** A battery gives more than its limit. */
  | 'discharge-limit'
  /** A fuse, contact or shunt carries more than its rating. */
  | 'above-rating'
  /** A converter is asked for more than its limit. */
  | 'converter-limit'
  /** A source is on and rests, as no battery is joined that it could charge. */
  | 'nothing-to-charge'
  /** Chargers are taken to give their full current. */
  | 'full-current'
  /** Chargers hold the voltage of their stage and give less than they could. */
  | 'holds-voltage'
  /** Batteries are taken as full, as their charger is in absorption or float. */
  | 'taken-as-full'
  /** A usual voltage stands in for one of the stages that is not typed, and it matters. */
  | 'typical-charge-voltage'
  /** A controller without an array in the sun. */
  | 'no-array'
  /** Controllers on one array share its power by their limits. */
  | 'shared-array'
  /** It works by a voltage that is not typed: it stays as it is set. */
  | 'missing-threshold'
  /** Both coils of a latching relay are fed: it stays as it is. */
  | 'both-coils'

export interface OperatingNote {
  readonly note: OperatingNoteKind
  readonly parts: readonly PartId[]
  readonly conductors: readonly ConductorId[]
  /** Where a limit is passed: the current, and the limit. */
  readonly amps?: Amps
  readonly limitA?: Amps
}

export interface OperatingPoint {
  readonly ok: true
  /** The state with every contact where it came to stand: the one to start the next from. */
  readonly state: OperatingState
  /** A, positive from → to; 0 where no current can flow. Conductors that carry power only. */
  readonly conductors: ReadonlyMap<ConductorId, Amps>
  /** A of each fuse, contact and shunt, `${part}/${branch}`, and of ways to the frame, `${part}/frame`; 0 where open. */
  readonly branches: ReadonlyMap<string, Amps>
  /** V of terminals, `${part}/${terminal}`, and of the `frame`, above the negative of the battery they are joined to; 0 if to none. */
  readonly volts: ReadonlyMap<string, Volts>
  /** By `${part}/${device}`. */
  readonly devices: ReadonlyMap<string, DevicePoint>
  readonly shunts: ReadonlyMap<PartId, ShuntPoint>
  /** Coils, `${part}/${device}`: fed or not. */
  readonly relays: ReadonlyMap<string, boolean>
  readonly power: PowerBalance
  readonly notes: readonly OperatingNote[]
}

/**
 * no-battery: there is none to hold a voltage. relays-chatter: these contacts never come to stand. Others: no
 * steady state was found; `parts` are the ones to look at.
 */
export interface NoOperatingPoint {
  readonly ok: false
  readonly reason: 'no-battery' | 'relays-chatter' | 'no-steady-state'
  readonly parts: readonly PartId[]
}
