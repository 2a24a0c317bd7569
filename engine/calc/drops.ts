import { kindOf } from '../kinds/all'
import type { ConductorId, Design, PartId } from '../model/design'
import { partById } from '../model/lookup'
import { complete } from '../model/values'
import { resistancePerMetre } from '../tables/resistance'
import type { CircuitClass, RuleSet } from '../tables/rulesets'
import type { Celsius } from '../units'
import type { Answer, Drop, DropAnswer } from './answers'
import { drawing, type LoadDrop, loadDrops, type NoDrop } from './drop'
import { TERMINATION_OHMS } from './network'
import type { Solved, State } from './solved'

/**
 * Drops of every device that draws, with every contact closed. Key `${part}/${device}`. A drop that leans on a
 * missing size or length, or on a device of unknown size, is not checked.
 */
export function dropsOf(design: Design, ruleSet: RuleSet, state: State): Map<string, DropAnswer> {
  const { any, none } = state
  const answers = new Map<string, DropAnswer>()
  const dropOf = loadDrops(any.p, warmOhms(any, ruleSet.dropAtC.value))
  const without = any === none ? null : loadDrops(none.p, warmOhms(none, ruleSet.dropAtC.value))
  for (const d of drawing(any.p)) {
    const id = any.p.form.devices[d]!.id
    const ref = any.border.devices.get(id)
    if (!ref || ref.role === 'battery') continue
    const service = serviceOf(design, ref.part)
    const found = dropOf(d)
    const other = without?.(none.p.deviceIndex.get(id)!) ?? found
    answers.set(id, {
      part: ref.part,
      device: ref.device.key,
      service,
      limitPercent: ruleSet.dropPercent[service].value,
      drop: answerOf(design, any, found, other),
    })
  }
  return answers
}

function answerOf(
  design: Design,
  s: Solved,
  found: LoadDrop | NoDrop,
  without: LoadDrop | NoDrop,
): Answer<Drop> {
  if ('reason' in found) return { notChecked: found.reason, parts: [], conductors: [] }
  const branchId = (branch: number): string => s.p.form.branches[branch]!.id
  const conductors = leanedOn(s, found)
  if (conductors.length > 0) return { notChecked: 'missing-run', parts: [], conductors }
  if (!Number.isFinite(found.volts) || 'reason' in without || Math.abs(found.volts - without.volts) > 1e-9) {
    const parts = [...s.border.unknownDevices].flatMap((id) => s.border.devices.get(id)?.part ?? [])
    return { notChecked: 'missing-figure', parts: [...new Set(parts)], conductors: [] }
  }
  const inConductors = found.parts.filter((x) => s.border.conductors.has(branchId(x.branch)))
  const total = inConductors.reduce((sum, x) => sum + x.volts, 0)
  return {
    value: {
      volts: found.volts,
      conductorsV: total,
      percent: (100 * total) / design.settings.systemV,
      conductors: inConductors
        .map((x) => ({ conductor: branchId(x.branch), volts: x.volts }))
        .sort((a, b) => b.volts - a.volts),
      devicesV: found.volts - total,
      witness: [...found.witness].flatMap((amps, d) => {
        const ref = amps === 0 ? undefined : s.border.devices.get(s.p.form.devices[d]!.id)
        return ref ? [{ part: ref.part, device: ref.device.key, amps }] : []
      }),
    },
  }
}

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
function warmOhms({ border, p }: Solved, at: Celsius): Float64Array {
  return Float64Array.from(p.form.branches, (b) => {
    const c = border.conductors.get(b.id)
    const perMetre = c?.size ? resistancePerMetre(c.size, at) : undefined
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
