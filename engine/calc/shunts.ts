import { kindOf } from '../kinds/all'
import type { Design, PartId } from '../model/design'
import { partById } from '../model/lookup'
import { complete } from '../model/values'
import type { Answer, MeterShare, NotChecked, ReadingError, ShuntAnswer } from './answers'
import { type MeterRole, meter } from './meters'
import { deviceCurrents, type ReadingError as Misreading, readingErrors } from './reading'
import { leaningOn, type Solved, type State, untriedAt } from './solved'

/** Truth of every shunt, at its worst over all throws of changeovers, with every make contact closed. */
export function shuntsOf(design: Design, states: readonly State[]): Map<PartId, ShuntAnswer> {
  const answers = new Map<PartId, ShuntAnswer>()
  for (const state of states) {
    if (state.opened) continue
    for (const answer of inState(design, state)) {
      const before = answers.get(answer.part)
      answers.set(answer.part, before ? worseOf(before, answer) : answer)
    }
  }
  return answers
}

function inState(design: Design, state: State): ShuntAnswer[] {
  const s = state.any
  const shunts = s.border.form.branches.filter((b) => b.kind === 'shunt')
  if (shunts.length === 0) return []
  const currents = deviceCurrents(s.p)
  return shunts.flatMap((branch): ShuntAnswer[] => {
    const ref = s.border.branches.get(branch.id)
    if (!ref) return []
    const role = meterRoleOf(design, ref.part)
    const e = s.p.branchIndex.get(branch.id)!
    const m = meter(s.p, s.envelope.coefficients, { shunt: e, role })
    const leaning = leaningOn(s, s.envelope.block[e]!)
    const gap = leaning ?? untriedAt(state, s.envelope.block[e]!) ?? unknownIn(s)
    const errors = readingErrors(currents, m)
    const shares = m.shares.flatMap((share): MeterShare[] => {
      const device = s.border.devices.get(s.border.form.devices[share.device]!.id)
      if (!device || share.expected === undefined || !share.range) return []
      if (!kindOf(partById(design, device.part)?.kind ?? '')) return []
      const { part } = device
      return [
        { part, device: device.device.key, role: device.role, ...share.range, expected: share.expected },
      ]
    })
    return [
      {
        part: ref.part,
        role,
        reversed: m.reversed,
        betweenBatteries: m.betweenBatteries,
        shares,
        leaning,
        over: gap ?? readingError(s, errors.over),
        under: gap ?? readingError(s, errors.under),
      },
    ]
  })
}

/** Of two positions, for each device the share that is further from what it should be, and the greater errors. */
function worseOf(a: ShuntAnswer, b: ShuntAnswer): ShuntAnswer {
  const keyOf = (s: MeterShare): string => `${s.part}/${s.device}`
  const shares = new Map(a.shares.map((s) => [keyOf(s), s]))
  for (const s of b.shares) {
    const before = shares.get(keyOf(s))
    if (!before || outBy(s) > outBy(before)) shares.set(keyOf(s), s)
  }
  return {
    part: a.part,
    role: a.role,
    reversed: a.reversed || b.reversed,
    betweenBatteries: Math.max(a.betweenBatteries, b.betweenBatteries),
    shares: [...shares.values()],
    leaning: a.leaning ?? b.leaning,
    over: greater(a.over, b.over),
    under: greater(a.under, b.under),
  }
}

const outBy = (s: MeterShare): number => Math.max(Math.abs(s.from - s.expected), Math.abs(s.to - s.expected))

function greater(a: Answer<ReadingError>, b: Answer<ReadingError>): Answer<ReadingError> {
  if (!('value' in a)) return a
  if (!('value' in b) || b.value.amps === 'unlimited') return b
  return a.value.amps === 'unlimited' || a.value.amps >= b.value.amps ? a : b
}

/** What a shunt is there to measure, as its card says. */
export function meterRoleOf(design: Design, id: PartId): MeterRole {
  const part = partById(design, id)
  const kind = part && kindOf(part.kind)
  return kind && complete(kind.fields, part.values).role === 'load' ? 'load' : 'battery'
}

/** How far a reading can be out hangs on what every device may draw. */
function unknownIn({ border }: Solved): NotChecked | null {
  const parts = [...border.unknownDevices].flatMap((id) => border.devices.get(id)?.part ?? [])
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
