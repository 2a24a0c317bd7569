import { kindOf } from '../kinds/all'
import type { Design, PartId } from '../model/design'
import { complete } from '../model/values'
import type { Answer, MeterShare, NotChecked, ReadingError, ShuntAnswer } from './answers'
import { type MeterRole, meter } from './meters'
import { deviceCurrents, type ReadingError as Misreading, readingErrors } from './reading'
import { assumedIn, type Solved } from './solved'

/** Truth of every shunt, with every contact closed (of a changeover, its first position). */
export function shuntsOf(design: Design, s: Solved): Map<PartId, ShuntAnswer> {
  const answers = new Map<PartId, ShuntAnswer>()
  const shunts = s.border.form.branches.filter((b) => b.kind === 'shunt')
  if (shunts.length === 0) return answers
  const currents = deviceCurrents(s.p)
  for (const branch of shunts) {
    const ref = s.border.branches.get(branch.id)
    if (!ref) continue
    const role = roleOf(design, ref.part)
    const e = s.p.branchIndex.get(branch.id)!
    const m = meter(s.p, s.envelope.coefficients, { shunt: e, role })
    const gap = gapOf(s, e)
    const errors = readingErrors(currents, m)
    answers.set(ref.part, {
      part: ref.part,
      role,
      reversed: m.reversed,
      betweenBatteries: m.betweenBatteries,
      shares: m.shares.flatMap((share): MeterShare[] => {
        const device = s.border.devices.get(s.border.form.devices[share.device]!.id)
        if (!device || share.expected === undefined) return []
        const { from, to } = share.range ?? { from: 0, to: 0 }
        return [
          {
            part: device.part,
            device: device.device.key,
            role: device.role,
            from,
            to,
            expected: share.expected,
          },
        ]
      }),
      over: gap ?? readingError(s, errors.over),
      under: gap ?? readingError(s, errors.under),
    })
  }
  return answers
}

function roleOf(design: Design, id: PartId): MeterRole {
  const part = design.parts.find((p) => p.id === id)
  const kind = part && kindOf(part.kind)
  return kind && complete(kind.fields, part.values).role === 'load' ? 'load' : 'battery'
}

/** Shares hang on resistances where the shunt lies in a mesh, and errors on what every device may draw. */
function gapOf(s: Solved, e: number): NotChecked | null {
  const block = s.envelope.block[e]!
  const conductors = block >= 0 ? assumedIn(s, block) : []
  if (conductors.length > 0) return { notChecked: 'missing-run', parts: [], conductors }
  const parts = [...s.border.unknownDevices].flatMap((id) => s.border.devices.get(id)?.part ?? [])
  return parts.length > 0
    ? { notChecked: 'missing-figure', parts: [...new Set(parts)], conductors: [] }
    : null
}

function readingError(s: Solved, error: Misreading): Answer<ReadingError> {
  return {
    value: {
      amps: Number.isFinite(error.amps) ? error.amps : 'unlimited',
      causes: error.causes.flatMap(({ device, amps }) => {
        const ref = s.border.devices.get(s.border.form.devices[device]!.id)
        return ref ? [{ part: ref.part, device: ref.device.key, amps }] : []
      }),
    },
  }
}
