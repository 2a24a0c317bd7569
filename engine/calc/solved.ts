import type { ConductorId, PartId } from '../model/design'
import type { WitnessLine } from './answers'
import { type EnvelopeResult, envelopes } from './envelope'
import type { Border } from './network'
import { type Prepared, prepare } from './prepare'
import { type ProtectionResult, protection } from './protection'
import { type ReturnsResult, returns } from './returns'
import type { Witness } from './witness'

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
}

export function solved(border: Border): Solved {
  const p = prepare(border.form)
  const guarded = protection(p)
  return { border, p, envelope: envelopes(p), protection: guarded, returns: returns(p) }
}

/** Part of a device or part branch by its network id; undefined for what stands in no part. */
export const partOfDevice = (border: Border, id: string): PartId | undefined => border.devices.get(id)?.part

export function witnessLines(border: Border, witness: Witness): WitnessLine[] {
  return witness.devices.flatMap(({ device, current }) => {
    const ref = border.devices.get(device)
    return ref ? [{ part: ref.part, device: ref.device.key, amps: current }] : []
  })
}

/** Conductors whose resistance stands in, in one meshed block. */
export function assumedIn({ border, p, envelope }: Solved, block: number): ConductorId[] {
  if (border.assumed.size === 0) return []
  return [...border.assumed].filter((id) => {
    const e = p.branchIndex.get(id)
    return e !== undefined && envelope.block[e] === block
  })
}

/** Parts with an unknown device that has a say in a branch. */
export function unknownParts({ border, p, envelope }: Solved, branch: number): PartId[] {
  const shares = envelope.coefficients(branch)
  const parts = [...border.unknownDevices].flatMap((id) => {
    const d = p.deviceIndex.get(id)
    const part = partOfDevice(border, id)
    return d !== undefined && part !== undefined && shares[d] !== 0 ? [part] : []
  })
  return [...new Set(parts)]
}
