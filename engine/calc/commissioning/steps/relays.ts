import { terminalsIn } from '../../../edit/terminal'
import { kindOf } from '../../../kinds/all'
import type { PartId } from '../../../model/design'
import type { PlannedContact } from '../../operating/plan'
import type { OperatingState } from '../../operating/state'
import { notKnown, seen, threshold, voltsOrDead } from '../expect'
import { negativeFor, probe, volts } from '../probes'
import { fullAndLow, isHandSwitch, isPoint, onlyThese, type Rig, switchedOn } from '../rig'
import type { Expected, Probe, Reading, StepTells, TestStep } from '../step'

/** What switches, and by what: coils, pulses, voltages, hands, temperatures, levels, the running engine. */
export function relaySteps(rig: Rig): TestStep[] {
  const byPart = new Map<PartId, PlannedContact[]>()
  for (const c of rig.plan.contacts) byPart.set(c.part, [...(byPart.get(c.part) ?? []), c])
  return [
    ...[...byPart].flatMap(([part, contacts]) => {
      const tells = tellsOf(rig, part, contacts)
      return tells === null ? [] : [relayStep(rig, part, contacts, tells)]
    }),
    ...runSignals(rig),
  ]
}

function tellsOf(rig: Rig, part: PartId, [first]: readonly PlannedContact[]): StepTells | null {
  const kind = kindOf(rig.part(part).kind)?.key
  const w = first!.workedBy
  if (w?.by === 'coil') return first!.changeover ? 'changeover' : 'relay'
  if (w?.by === 'pulses') return 'latching'
  if (w?.by === 'voltage') return w.usually === 'open' ? 'combiner' : null
  if (kind === 'thermostat' || kind === 'float-switch') return kind
  return isHandSwitch(rig, part) ? 'hand-switch' : null
}

function relayStep(rig: Rig, part: PartId, contacts: readonly PlannedContact[], tells: StepTells): TestStep {
  const several = contacts.length > 1
  const coil = contacts.flatMap(({ workedBy: w }) => (w?.by === 'coil' ? [`${part}/${w.coil}`] : []))[0]
  const readings = [
    ...(coil === undefined ? [] : [coilReading(rig, coil, onlyThese(rig, [coil]))]),
    ...contacts.flatMap((c) => contactReadings(rig, c, coil, several)),
  ]
  return {
    key: `relays/${part}`,
    group: 'relays',
    tells,
    parts: [part],
    conductors: [],
    cautions: tells === 'combiner' ? ['battery-short'] : ['moves'],
    setting: { loads: 'off', ...(coil === undefined ? {} : { on: switchedOn(rig, [coil]) }) },
    readings: readings.length > 0 ? readings : [plainly(part)],
  }
}

const plainly = (part: PartId, key = 'so'): Reading => ({
  key,
  asks: 'so',
  instrument: 'hand',
  at: [probe(part)],
  conductors: [],
  expected: seen(),
})

function coilReading(rig: Rig, coil: string, state: OperatingState): Reading {
  const x = rig.plan.devices.find((d) => d.id === coil)!
  const [high, low] = [probe(x.part, x.device.positive), probe(x.part, x.device.negative)]
  return measured(rig, 'coil', 'coil', high, low, state)
}

/** The far side of a contact, closed and open. */
function contactReadings(rig: Rig, c: PlannedContact, coil: string | undefined, several: boolean): Reading[] {
  const { branch } = rig.plan.border.branches.get(c.id)!
  const w = c.workedBy
  if (w?.by === 'voltage') return thresholds(c.part, w.closesV, w.opensV)
  const far = probe(c.part, branch.to)
  const low = negativeFor(rig, far)
  const name = several && branch.name ? { name: branch.name } : {}
  const [on, off] = statesOf(rig, c, coil)
  const read = (key: 'on' | 'off', state: OperatingState): Reading => ({
    ...measured(rig, `${key}:${branch.key}`, key === 'on' ? 'voltage-on' : 'voltage-off', far, low, state),
    ...name,
  })
  return [read('on', on), read('off', off)]
}

/** States in which what works a contact is on, and off. */
function statesOf(
  rig: Rig,
  { id, workedBy: w }: PlannedContact,
  coil: string | undefined,
): readonly [on: OperatingState, off: OperatingState] {
  if (w?.by === 'coil') return [onlyThese(rig, [coil!]), onlyThese(rig, [])]
  const open = new Set(rig.quiet.open)
  open.delete(id)
  return [
    { ...rig.quiet, open },
    { ...rig.quiet, open: new Set([...open, id]) },
  ]
}

function measured(
  rig: Rig,
  key: string,
  asks: Reading['asks'],
  high: Probe,
  low: Probe | null,
  state: OperatingState,
): Reading {
  const found = fullAndLow(rig, state)
  const expected: Expected = !low
    ? notKnown('no-supply', [high.part])
    : isPoint(found)
      ? voltsOrDead(...found.map((p) => volts(rig, p, high, low)))
      : notKnown('no-operating-point', found.parts)
  return { key, asks, instrument: 'voltmeter', at: low ? [high, low] : [high], conductors: [], expected }
}

export function thresholds(part: PartId, closesV: number | null, opensV: number | null): Reading[] {
  const read = (key: 'closes-at' | 'opens-at', v: number | null): Reading => ({
    key,
    asks: key,
    instrument: 'adjustable-supply',
    at: [probe(part)],
    conductors: [],
    expected: v === null ? notKnown('no-threshold', [part]) : threshold(v),
  })
  return [read('closes-at', closesV), read('opens-at', opensV)]
}

/** A charger that waits for the running engine does not charge without it. */
const runSignals = ({ design }: Rig): TestStep[] =>
  design.parts.flatMap((p): TestStep[] => {
    if (!terminalsIn(p)?.some((t) => t.key === 'run')) return []
    return [
      {
        key: `relays/${p.id}/run`,
        group: 'relays',
        tells: 'run-signal',
        parts: [p.id],
        conductors: [],
        cautions: ['engine'],
        setting: {},
        readings: [plainly(p.id)],
      },
    ]
  })
