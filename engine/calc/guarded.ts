import type { PartId } from '../model/design'
import { above } from '../units'
import type { Answer, EndAnswer, Guard, NotChecked } from './answers'
import type { Border } from './network'
import type { CutMember, EndProtection, ProtectionGap } from './protection'
import { partOfDevice, type Solved, type State } from './solved'

type End = 'from' | 'to'
type Told = Exclude<EndProtection, { notChecked: ProtectionGap }>

/** What can come into one end of a conductor, over all throws; every make contact closed lets the most through. */
export function guardedEnd(states: readonly State[], conductor: string, end: End): Answer<EndAnswer> {
  let best: { solved: Solved; answer: Told } | null = null
  for (const state of states) {
    const { any } = state
    const e = any.p.branchIndex.get(conductor)
    if (e === undefined || state.opened) continue
    const answer = any.protection.end(e, end)
    const unknown = unknownAt(state, e, end)
    if (unknown) return unknown
    if ('notChecked' in answer) return gapOf(any.border, answer.notChecked)
    if (best === null || above(answer.flow, best.answer.flow)) best = { solved: any, answer }
  }
  if (best === null) return { notChecked: 'not-in-network', parts: [], conductors: [] }
  return { value: endAnswer(best.solved.border, best.answer) }
}

/** Does what can come hang on a device of unknown size? Then it is known only to be no less than without it. */
function unknownAt({ any, none }: State, e: number, end: End): NotChecked | null {
  if (any === none) return null
  const flow = (s: Solved): number => (end === 'from' ? s.protection.intoFrom : s.protection.intoTo)[e]!
  const [most, least] = [flow(any), flow(none)]
  return most === least || (Number.isNaN(most) && Number.isNaN(least)) ? null : missingFigure(any.border)
}

/** Devices whose fault current is not known, or any whose size is not. */
export function missingFigure(border: Border): NotChecked {
  const unknown = [...border.unknownDevices]
  const feeding = unknown.filter((id) => border.devices.get(id)?.device.sustainedFaultA === null)
  const parts = partsOf(border, feeding.length > 0 ? feeding : unknown)
  return { notChecked: 'missing-figure', parts, conductors: [] }
}

export function endAnswer(border: Border, answer: Told): EndAnswer {
  if ('path' in answer)
    return {
      amps: 'unlimited',
      guards: [],
      way: answer.path.filter((id) => border.conductors.has(id)),
      source: partOfDevice(border, answer.source) ?? null,
    }
  return { amps: answer.flow, guards: guardsOf(border, answer.cut), way: [], source: null }
}

export function guardsOf(border: Border, cut: readonly CutMember[]): Guard[] {
  return cut.flatMap((member): Guard[] => {
    const branch = border.branches.get(member.id)
    if (member.kind === 'fuse' && branch)
      return [{ is: 'device', part: branch.part, key: branch.branch.key, amps: member.amps }]
    const device = border.devices.get(member.id)
    return device ? [{ is: 'source', part: device.part, key: device.device.key, amps: member.amps }] : []
  })
}

export function gapOf(border: Border, gap: ProtectionGap): NotChecked {
  switch (gap.code) {
    case 'source-cycle':
      return { notChecked: gap.code, parts: partsOf(border, gap.devices), conductors: [] }
    case 'missing-rating':
      return { notChecked: gap.code, parts: partsOf(border, gap.fuses), conductors: [] }
    case 'not-a-conductor':
      return { notChecked: 'not-in-network', parts: [], conductors: [] }
  }
}

/** Parts of devices or part branches, each once. */
function partsOf(border: Border, ids: readonly string[]): PartId[] {
  return [
    ...new Set(ids.flatMap((id) => border.devices.get(id)?.part ?? border.branches.get(id)?.part ?? [])),
  ]
}
