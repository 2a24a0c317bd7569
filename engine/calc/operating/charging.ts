import type { PartDevice } from '../../model/kind'
import type { Amps, Ohms, Volts, Watts } from '../../units'
import type { Stretches } from '../stretches'
import { CHARGING, FLOATING, heldOhms, nominalOf, STANDING_A } from './practice'

/**
 * Charge stages, simplified on purpose. Bulk: a charger gives its current until the voltage at its terminals reaches its
 * absorption voltage. Absorption and float: it holds the voltage of the stage, up to its current, and what it charges is
 * taken as full: it takes next to nothing, and gives only under its rest voltage. How a battery fills over the hours,
 * and how long a stage lasts, is not reckoned.
 */
export const CHARGE_STAGES = ['bulk', 'absorption', 'float'] as const
export type ChargeStage = (typeof CHARGE_STAGES)[number]

export const hasStages = ({ charging }: Pick<PartDevice, 'charging'>): boolean =>
  charging?.floatV !== undefined

/** Voltage that a charger holds in a stage, V; null: it holds none. `restV`: of what it charges. */
export function stageVolts({ charging }: PartDevice, stage: ChargeStage, restV: Volts): Volts | null {
  if (!charging) return null
  if (stage === 'float' && hasStages({ charging })) return charging.floatV ?? FLOATING * nominalOf(restV)
  return charging.absorptionV ?? CHARGING * nominalOf(restV)
}

export const hasTypedVolts = ({ charging }: PartDevice, stage: ChargeStage): boolean =>
  (stage === 'float' && charging?.floatV !== undefined ? charging.floatV : charging?.absorptionV) != null

/** What gives a current or a power until it comes to hold a voltage, and rests where the voltage is higher without it. */
export function upTo(volts: Volts, gives: { readonly amps: Amps } | { readonly watts: Watts }): Stretches {
  const amps = 'amps' in gives ? gives.amps : gives.watts / volts
  const ohms = heldOhms(volts, amps)
  // Where what it gives meets the line of what holds: v = volts − ohms · i, or v² − volts · v + ohms · watts = 0.
  const holdsFrom =
    'amps' in gives
      ? volts - ohms * amps
      : volts / 2 + Math.sqrt(Math.max(0, (volts / 2) ** 2 - ohms * gives.watts))
  return [
    'amps' in gives ? { fromV: 0, amps: gives.amps } : { fromV: 0, watts: gives.watts },
    { fromV: holdsFrom, volts, ohms },
    { fromV: volts, amps: 0 },
  ]
}

/** A full battery on a charger that holds a voltage: it gives under its rest voltage and takes above the held one. */
export function standingAt(heldV: Volts, restV: Volts, ohms: Ohms): Stretches {
  return [
    { fromV: 0, volts: restV, ohms },
    { fromV: restV, volts: restV, ohms: (heldV - restV) / STANDING_A },
    { fromV: heldV, volts: heldV - STANDING_A * ohms, ohms },
  ]
}
