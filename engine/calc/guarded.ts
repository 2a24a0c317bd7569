import type { Answer, EndAnswer, Guard, NotChecked } from './answers'
import type { CutMember, EndProtection, ProtectionGap } from './protection'
import { partOfDevice, type Solved, type State } from './solved'

/** What can come into one end of a conductor, at its greatest over all positions of the contacts. */
export function guardedEnd(
  states: readonly State[],
  conductor: string,
  end: 'from' | 'to',
): Answer<EndAnswer> {
  let best: { solved: Solved; answer: Exclude<EndProtection, { notChecked: ProtectionGap }> } | null = null
  for (const { any, none } of states) {
    const e = any.p.branchIndex.get(conductor)
    if (e === undefined) continue
    const answer = any.protection.end(e, end)
    if ('notChecked' in answer) return gapOf(any, answer.notChecked)
    if (any !== none) {
      const flow = (end === 'from' ? none.protection.intoFrom : none.protection.intoTo)[e]!
      if (flow !== (answer.flow === 'unlimited' ? Number.POSITIVE_INFINITY : answer.flow))
        return {
          notChecked: 'missing-figure',
          parts: partsOf(any, [...any.border.unknownDevices]),
          conductors: [],
        }
    }
    if (best === null || above(answer.flow, best.answer.flow)) best = { solved: any, answer }
  }
  if (best === null) return { notChecked: 'not-in-network', parts: [], conductors: [] }
  return { value: endAnswer(best.solved, best.answer) }
}

const above = (a: number | 'unlimited', b: number | 'unlimited'): boolean =>
  b !== 'unlimited' && (a === 'unlimited' || a > b)

function endAnswer(s: Solved, answer: Exclude<EndProtection, { notChecked: ProtectionGap }>): EndAnswer {
  if ('path' in answer)
    return {
      amps: 'unlimited',
      guards: [],
      way: answer.path.filter((id) => s.border.conductors.has(id)),
      source: partOfDevice(s.border, answer.source) ?? null,
    }
  return { amps: answer.flow, guards: guardsOf(s, answer.cut), way: [], source: null }
}

export function guardsOf({ border }: Solved, cut: readonly CutMember[]): Guard[] {
  return cut.flatMap((member): Guard[] => {
    const branch = border.branches.get(member.id)
    if (member.kind === 'fuse' && branch)
      return [{ is: 'device', part: branch.part, key: branch.branch.key, amps: member.amps }]
    const device = border.devices.get(member.id)
    return device ? [{ is: 'source', part: device.part, key: device.device.key, amps: member.amps }] : []
  })
}

export function gapOf(s: Solved, gap: ProtectionGap): NotChecked {
  switch (gap.code) {
    case 'source-cycle':
      return { notChecked: gap.code, parts: partsOf(s, gap.devices), conductors: [] }
    case 'missing-rating':
      return { notChecked: gap.code, parts: partsOf(s, gap.fuses), conductors: [] }
    case 'not-a-conductor':
      return { notChecked: 'not-in-network', parts: [], conductors: [] }
  }
}

/** Parts of devices or part branches, each once. */
function partsOf({ border }: Solved, ids: readonly string[]): string[] {
  return [
    ...new Set(ids.flatMap((id) => border.devices.get(id)?.part ?? border.branches.get(id)?.part ?? [])),
  ]
}
