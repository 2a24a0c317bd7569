import type { PartDevice } from '../../model/kind'
import type { Volts } from '../../units'
import { type ChargeStage, hasStages } from './charging'
import type { Plan } from './plan'
import type { OperatingState } from './state'

/** What the state says of each device, with what is usual where it says nothing. By device. */
export interface Uses {
  /** Use of a load, or sun on an array or use of a source: 0 to 1. A two-way device has a use each way. */
  readonly share: Float64Array
  readonly draws: Float64Array
  /** Battery: V at its state of charge. */
  readonly emf: Float64Array
  /** Charger: the stage it is in; bulk where it has none. */
  readonly stage: readonly ChargeStage[]
}

export function usesOf({ devices }: Plan, state: OperatingState): Uses {
  const share = new Float64Array(devices.length)
  const draws = new Float64Array(devices.length)
  const emf = new Float64Array(devices.length)
  devices.forEach(({ id, is, device, waitsFor }, d) => {
    const rests =
      is === 'source' || is === 'array' || is === 'two-way' || (is === 'charger' && waitsFor.length === 0)
    share[d] = shareOf(state.sources.get(id), rests ? 0 : 1)
    draws[d] = shareOf(state.loads.get(id), 1)
    if (is === 'battery') emf[d] = restVolts(device, shareOf(state.charge.get(id), 1))
  })
  const stage = devices.map(({ id, device }): ChargeStage => {
    return hasStages(device) ? (state.stages?.get(id) ?? 'bulk') : 'bulk'
  })
  return { share, draws, emf, stage }
}

const shareOf = (stated: number | undefined, usual: number): number =>
  stated === undefined || Number.isNaN(stated) ? usual : Math.min(1, Math.max(0, stated))

/** Straight lines between the points of its curve; its emf where it has none. */
export function restVolts({ restCurve, emfV }: PartDevice, charge: number): Volts {
  const next = restCurve?.findIndex(([at]) => at >= charge) ?? -1
  const above = restCurve?.[next]
  if (!above) return emfV ?? 0
  const below = restCurve[next - 1] ?? above
  const width = above[0] - below[0]
  return width === 0 ? above[1] : below[1] + ((charge - below[0]) / width) * (above[1] - below[1])
}
