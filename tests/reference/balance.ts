import { networkOf } from '../../engine/calc/network'
import type { OperatingPoint } from '../../engine/calc/operating/state'
import type { Design } from '../../engine/model/design'

/**
 * Certificates of an operating point, from the drawn network and the figures that were given alone: Kirchhoff's
 * current law at every node, Ohm's law on every closed branch, and power in = power out. Largest faults: A, V, W.
 */
export function certificate(design: Design, point: OperatingPoint) {
  const { form, branches, nodeOf } = networkOf(design, 'none', new Set())
  const amps = (id: string): number => point.conductors.get(id) ?? point.branches.get(id)!
  const left = new Map(form.nodes.map((node) => [node, 0]))
  const add = (node: string, by: number): unknown => left.set(node, left.get(node)! + by)
  const volts = new Map<string, number>()
  for (const [terminal, v] of point.volts) volts.set(nodeOf.get(terminal) ?? terminal, v)

  let ohm = 0
  let lost = 0
  for (const b of form.branches) {
    const i = amps(b.id)
    add(b.from, -i)
    add(b.to, i)
    lost += i * i * b.resistance
    const key = branches.get(b.id)?.branch
    const throwsTo =
      key?.changeover && point.state.throws.get(`${branches.get(b.id)!.part}/${key.changeover.name}`)
    const open =
      point.state.open.has(b.id) ||
      point.state.blown.has(b.id) ||
      (throwsTo !== undefined && throwsTo !== key?.changeover?.position)
    if (!open) ohm = Math.max(ohm, Math.abs(volts.get(b.from)! - volts.get(b.to)! - i * b.resistance))
    else if (i !== 0) ohm = Number.POSITIVE_INFINITY
  }
  let given = 0
  for (const d of form.devices) {
    const { amps: i, watts } = point.devices.get(d.id)!
    add(d.positive, i)
    add(d.negative, -i)
    given += watts
  }
  const { batteries, sources, loads, converters, ways } = point.power
  return {
    kirchhoff: Math.max(0, ...[...left.values()].map(Math.abs)),
    ohm,
    power: Math.max(Math.abs(given - lost), Math.abs(batteries + sources - loads - converters - ways)),
    /** Largest power or, at 12 V, current of a device: what rounding goes with. W. */
    size: Math.max(
      1,
      ...[...point.devices.values()].map((d) => Math.max(Math.abs(d.watts), 12 * Math.abs(d.amps))),
    ),
  }
}
