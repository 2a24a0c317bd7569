import type { ConductorId, PartId } from '../model/design'
import type { NotChecked, WitnessLine } from './answers'
import { type EnvelopeResult, envelopes } from './envelope'
import type { Border } from './network'
import type { Prepared } from './prepare'
import { type ProtectionResult, protection } from './protection'
import { type ReturnsResult, returns } from './returns'
import type { DeviceCurrent } from './witness'

/** One network of the design solved: one position of its contacts, and one way to take unknown devices. */
export interface Solved {
  readonly border: Border
  readonly p: Prepared
  readonly envelope: EnvelopeResult
  readonly protection: ProtectionResult
  readonly returns: ReturnsResult
}

/** One position of the contacts, with devices of unknown size left out and let go. The same twice where none is unknown. */
export interface State {
  readonly any: Solved
  readonly none: Solved
  /**
   * Make contacts of one meshed part are opened, to see how current divides there: the same with them closed, and the
   * part. Everything outside it is at its worst with them closed. Null: every make contact is closed.
   */
  readonly opened: { readonly from: Solved; readonly block: number } | null
  /** Contacts of which not every combination is tried. */
  readonly untried: ReadonlySet<string>
}

/** Each answer is worked out when it is first asked for, and kept. */
export function solved(border: Border, p: Prepared): Solved {
  let envelope: EnvelopeResult | undefined
  let guarded: ProtectionResult | undefined
  let lasting: ReturnsResult | undefined
  return {
    border,
    p,
    get envelope() {
      envelope ??= envelopes(p)
      return envelope
    },
    get protection() {
      guarded ??= protection(p)
      return guarded
    },
    get returns() {
      lasting ??= returns(p)
      return lasting
    },
  }
}

/** Can a branch be worse off in this position than with every make contact closed? */
export function bearsOn({ opened }: State, branch: string): boolean {
  if (opened === null) return true
  const e = opened.from.p.branchIndex.get(branch)
  return e !== undefined && opened.from.envelope.block[e] === opened.block
}

/** Part of a device or part branch by its network id; undefined for what stands in no part. */
export const partOfDevice = (border: Border, id: string): PartId | undefined => border.devices.get(id)?.part

export function witnessLines(border: Border, devices: readonly DeviceCurrent[]): WitnessLine[] {
  return devices.flatMap(({ device, current }) => {
    const ref = border.devices.get(device)
    return ref ? [{ part: ref.part, device: ref.device.key, amps: current }] : []
  })
}

/**
 * Stand-in resistances in one meshed part: how current divides there hangs on conductors without size or length,
 * or on parts without a rating. Null where there are none, and outside meshed parts, where nothing hangs on them.
 */
export function leaningOn({ border, p, envelope }: Solved, block: number): NotChecked | null {
  if (block < 0 || border.assumed.size + border.unrated.size === 0) return null
  const here = (id: string): boolean => {
    const e = p.branchIndex.get(id)
    return e !== undefined && envelope.block[e] === block
  }
  const conductors: ConductorId[] = [...border.assumed].filter(here)
  if (conductors.length > 0) return { notChecked: 'missing-run', parts: [], conductors }
  const parts = [...border.unrated].filter(here).flatMap((id) => border.branches.get(id)?.part ?? [])
  return parts.length > 0
    ? { notChecked: 'missing-figure', parts: [...new Set(parts)], conductors: [] }
    : null
}

/** Is it one of the contacts whose combinations were too many to try, or in a meshed part with such? */
export function untriedAt({ any, untried }: State, block: number): NotChecked | null {
  if (untried.size === 0) return null
  const bearing = [...untried].filter((id) => {
    const e = any.p.branchIndex.get(id)
    const changeover = any.border.branches.get(id)?.branch.changeover !== undefined
    return changeover || (block >= 0 && e !== undefined && any.envelope.block[e] === block)
  })
  const parts = bearing.flatMap((id) => any.border.branches.get(id)?.part ?? [])
  return parts.length > 0
    ? { notChecked: 'too-many-positions', parts: [...new Set(parts)], conductors: [] }
    : null
}

/** Parts of the devices of unknown size that have a say in a worst case; of all such devices where none shows. */
export function unknownParts({ border, envelope }: Solved, branch: number, side: 'min' | 'max'): PartId[] {
  const { devices, ray } = envelope.witness(branch, side)
  const moved = [...devices, ...ray].map((x) => x.device).filter((id) => border.unknownDevices.has(id))
  const ids = moved.length > 0 ? moved : [...border.unknownDevices]
  return [...new Set(ids.flatMap((id) => partOfDevice(border, id) ?? []))]
}
