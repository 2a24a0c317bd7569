import { kindOf } from '../kinds/all'
import type { ConductorId, Design, PartId } from '../model/design'
import { partById } from '../model/lookup'
import { sizeIn } from '../model/sizes'
import { complete } from '../model/values'
import { resistancePerMetre } from '../tables/resistance'
import type { CircuitClass, RuleSet } from '../tables/rulesets'
import type { Amps, Celsius, Volts } from '../units'
import type { Answer, Drop, DropAnswer, WitnessLine } from './answers'
import { drawing, type LoadDrop, loadDrops, type NoDrop } from './drop'
import { type PartDeviceRef, TERMINATION_OHMS } from './network'
import type { Prepared } from './prepare'
import type { Solved, State } from './solved'

/**
 * Drops of every device that draws, at their greatest over all positions of the contacts: with one of two ways side by
 * side switched off, the other carries all of it. Key `${part}/${device}`. Outputs that hold a voltage supply as batteries do in circuits without one. A drop
 * that leans on a missing size or length, or on a device of unknown size, is not checked, unless it is too much without
 * that device.
 */
export function dropsOf(design: Design, ruleSet: RuleSet, states: readonly State[]): Map<string, DropAnswer> {
  const answers = new Map<string, DropAnswer>()
  for (const state of states) addDrops(design, ruleSet, state, answers)
  return answers
}

function addDrops(design: Design, ruleSet: RuleSet, state: State, answers: Map<string, DropAnswer>): void {
  const { any, none } = state
  const p = heldUp(any)
  const dropOf = loadDrops(p, warmOhms(design, any, ruleSet.dropAtC.value))
  const movingIn = movingOnce(any)
  const without = any === none ? null : loadDrops(heldUp(none), warmOhms(design, none, ruleSet.dropAtC.value))
  const sureOf = (of: LoadDrop | NoDrop): Answer<Drop> => answerOf(design, none, of, of, movingOnce(none))
  for (const d of drawing(p)) {
    const id = p.form.devices[d]!.id
    const ref = any.border.devices.get(id)
    if (!ref || ref.role === 'battery' || !kindOf(partById(design, ref.part)?.kind ?? '')) continue
    const found = dropOf(d)
    // The input of a converter that no battery feeds, as from an array, has no voltage to drop from.
    if ('reason' in found && isInput(any, ref)) continue
    const service = serviceOf(design, ref.part)
    const other = without?.(none.p.deviceIndex.get(id)!) ?? found
    const limitPercent = ruleSet.dropPercent[service].value
    const drop = answerOf(design, any, found, other, movingIn)
    // What is too much without the devices of unknown size is too much with them.
    const sure = 'notChecked' in drop && drop.notChecked === 'missing-figure' ? sureOf(other) : drop
    const isSure = 'value' in sure && sure.value.percent > limitPercent
    const answer = {
      part: ref.part,
      device: ref.device.key,
      service,
      limitPercent,
      drop: isSure ? sure : drop,
    }
    const before = answers.get(id)
    answers.set(id, before ? { ...answer, drop: greater(before.drop, answer.drop) } : answer)
  }
}

/** Where something feeds it in one position only, that one counts. */
function greater(a: Answer<Drop>, b: Answer<Drop>): Answer<Drop> {
  const isUnfed = (x: Answer<Drop>): boolean => 'notChecked' in x && x.notChecked === 'no-battery-feeds-it'
  if (isUnfed(a)) return b
  if (isUnfed(b) || 'notChecked' in a) return a
  return 'notChecked' in b || b.value.volts > a.value.volts ? b : a
}

/** The network with outputs that hold a voltage as batteries, in the nets where no battery does. */
function heldUp({ border, p }: Solved): Prepared {
  const held = new Set(
    p.form.devices.flatMap((d, i) => (d.emf === undefined ? [] : [p.net[p.positive[i]!]!])),
  )
  const devices = p.form.devices.map((d, i) => {
    const volts = border.devices.get(d.id)?.device.holdsV
    return d.emf !== undefined || volts == null || held.has(p.net[p.positive[i]!]!) ? d : { ...d, emf: volts }
  })
  return { ...p, form: { ...p.form, devices } }
}

const isInput = ({ border }: Solved, ref: PartDeviceRef): boolean =>
  [...border.devices.values()].some(
    (other) => other.part === ref.part && other.device.suppliedBy?.device === ref.device.key,
  )

function answerOf(
  design: Design,
  s: Solved,
  found: LoadDrop | NoDrop,
  without: LoadDrop | NoDrop,
  movingIn: (currents: Float64Array) => readonly WitnessLine[],
): Answer<Drop> {
  if ('reason' in found) return { notChecked: found.reason, parts: [], conductors: [] }
  const branchId = (branch: number): string => s.p.form.branches[branch]!.id
  const conductors = leanedOn(s, found)
  if (conductors.length > 0) return { notChecked: 'missing-run', parts: [], conductors }
  if (!found.everySupply) return { notChecked: 'too-many-supplies', parts: [], conductors: [] }
  if (!Number.isFinite(found.volts) || 'reason' in without || Math.abs(found.volts - without.volts) > 1e-9) {
    const parts = [...s.border.unknownDevices].flatMap((id) => s.border.devices.get(id)?.part ?? [])
    return { notChecked: 'missing-figure', parts: [...new Set(parts)], conductors: [] }
  }
  const inConductors = found.parts.filter((x) => s.border.conductors.has(branchId(x.branch)))
  const total = inConductors.reduce((sum, x) => sum + x.volts, 0)
  const ofV = nominal(design, found.ofVolts)
  return {
    value: {
      volts: found.volts,
      conductorsV: total,
      percent: (100 * total) / ofV,
      ofV,
      conductors: inConductors
        .map((x) => ({ conductor: branchId(x.branch), volts: x.volts }))
        .sort((a, b) => b.volts - a.volts),
      devicesV: found.volts - total,
      witness: movingIn(found.witness),
    },
  }
}

/** The devices that move in a state, worked out once for loads that are at their worst in the same one. */
function movingOnce({ border, p }: Solved): (currents: Float64Array) => readonly WitnessLine[] {
  const known = new Map<Float64Array, readonly WitnessLine[]>()
  const refs = p.form.devices.map(({ id }) => border.devices.get(id))
  /** Most devices move alike in many states: one line for all of them. */
  const last: (WitnessLine | undefined)[] = []
  const lineOf = (ref: PartDeviceRef, d: number, amps: Amps): WitnessLine => {
    const line = last[d]
    if (line?.amps === amps) return line
    const fresh = { part: ref.part, device: ref.device.key, amps }
    last[d] = fresh
    return fresh
  }
  return (currents) => {
    const found = known.get(currents)
    if (found) return found
    const lines: WitnessLine[] = []
    currents.forEach((amps, d) => {
      const ref = amps === 0 ? undefined : refs[d]
      if (ref) lines.push(lineOf(ref, d, amps))
    })
    known.set(currents, lines)
    return lines
  }
}

/** The system voltage, or that of a circuit which has another. */
const nominal = ({ settings: { systemV } }: Design, ofVolts: Volts): Volts =>
  Math.abs(ofVolts - systemV) <= 0.25 * systemV ? systemV : ofVolts

/** Conductors without size or length that the drop hangs on: on the way itself, or in a meshed part that it crosses. */
function leanedOn({ border, p, envelope }: Solved, found: LoadDrop): ConductorId[] {
  if (border.assumed.size === 0) return []
  const onWay = new Set(found.parts.map((x) => x.branch))
  const blocks = new Set([...onWay].map((e) => envelope.block[e]!).filter((b) => b >= 0))
  return [...border.assumed].filter((id) => {
    const e = p.branchIndex.get(id)
    return e !== undefined && (onWay.has(e) || blocks.has(envelope.block[e]!))
  })
}

/** Resistance of each branch with the conductors at a temperature. */
function warmOhms(design: Design, { border, p }: Solved, at: Celsius): Float64Array {
  return Float64Array.from(p.form.branches, (b) => {
    const c = border.conductors.get(b.id)
    const perMetre = c?.size ? resistancePerMetre(c.size, at, (key) => sizeIn(design, key)) : undefined
    return c?.lengthM == null || perMetre === undefined
      ? b.resistance
      : perMetre * c.lengthM + 2 * TERMINATION_OHMS
  })
}

function serviceOf(design: Design, id: PartId): CircuitClass {
  const part = partById(design, id)
  const kind = part && kindOf(part.kind)
  return kind && complete(kind.fields, part.values).service === 'critical' ? 'critical' : 'general'
}
