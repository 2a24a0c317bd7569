import type { Design } from '../../model/design'
import { REST_VOLTAGE } from '../../tables/restvoltage'
import type { Volts } from '../../units'

export interface RestTable {
  readonly chemistry: keyof typeof REST_VOLTAGE
  /** State of charge 0 to 1, and volts of the whole system. */
  readonly rows: readonly { readonly charge: number; readonly volts: Volts }[]
}

/** Charges for which rest voltages are told. */
const TOLD = [1, 0.5, 0.2] as const

/** Rest voltages of the system for each chemistry among its batteries. O(parts). */
export function restTables(design: Design): RestTable[] {
  const found = new Set<keyof typeof REST_VOLTAGE>()
  for (const { kind, values } of design.parts) {
    const chemistry = values.chemistry
    if (kind === 'battery' && typeof chemistry === 'string' && Object.hasOwn(REST_VOLTAGE, chemistry))
      found.add(chemistry as keyof typeof REST_VOLTAGE)
  }
  const scale = design.settings.systemV / 12
  return [...found].map((chemistry) => ({
    chemistry,
    rows: TOLD.map((charge) => ({ charge, volts: between(REST_VOLTAGE[chemistry], charge) * scale })),
  }))
}

function between(curve: readonly (readonly [number, number])[], charge: number): number {
  const k = Math.max(
    1,
    curve.findIndex(([c]) => c >= charge),
  )
  const [c0, v0] = curve[k - 1]!
  const [c1, v1] = curve[k]!
  return v0 + ((v1 - v0) * (charge - c0)) / (c1 - c0)
}
