import type { Amps, Celsius } from '../units'
import type { AmpacityTable } from './ampacitytables'
import type { RuleSet } from './rulesets'
import { type Size, sizeByKey } from './sizes'

/** Ampacity with the rows and factors it came from. */
export interface Ampacity {
  readonly amps: Amps
  readonly baseAmps: Amps
  readonly factors: readonly { readonly name: string; readonly value: number; readonly source: string }[]
  readonly source: string
  /** False where a figure could not be confirmed; marked so on screen and paper. */
  readonly confirmed: boolean
  /** Row and column of the table that was used: they may lie below the conductor's own size and insulation. */
  readonly row: string
  readonly columnC: Celsius
}

/** What of a conductor its ampacity depends on; a `Conductor` fits. */
export interface AmpacitySpec {
  readonly size: string | null
  readonly insulationC: Celsius | null
  readonly engineSpace: boolean
  readonly bunched: number
}

export type AmpacityAnswer = { readonly value: Ampacity } | { readonly notChecked: string }

/**
 * Ampacity of a conductor under a rule set. Nothing is interpolated: a size that the table lacks takes the next
 * thinner row by true cross-section, an insulation between two columns the cooler one, both careful readings.
 * The gaps give a reason: no size, thinner than the thinnest row, an insulation cooler than the table's coolest,
 * surroundings or a bunch beyond the factors. O(rows).
 */
export function ampacityOf(ruleSet: RuleSet, spec: AmpacitySpec, ambientC: Celsius): AmpacityAnswer {
  if (spec.size === null) return { notChecked: 'no size is chosen' }
  const size = sizeByKey(spec.size)
  if (!size) return { notChecked: `the size "${spec.size}" is not in the catalogue` }
  const insulationC = spec.insulationC ?? ruleSet.insulationC
  const table = ruleSet.ampacity
  const column = table.insulationC.findLastIndex((c) => c <= insulationC)
  if (column < 0) return { notChecked: `the table has no column for insulation of ${insulationC} °C` }
  const row = rowFor(table, size)
  if (!row) return { notChecked: `the table has no row as thin as ${size.name}` }

  const columnC = table.insulationC[column]!
  const ambient = ruleSet.ambientFactor(ambientC, columnC, spec.engineSpace)
  if (!ambient)
    return { notChecked: `the rule set has no factor for ${ambientC} °C around ${columnC} °C insulation` }
  const bunch = ruleSet.bunchFactor(spec.bunched)
  if (!bunch) return { notChecked: `the rule set has no factor for ${spec.bunched} conductors bunched` }
  const baseAmps = row[1][column]!
  const used = [
    { name: spec.engineSpace ? 'engine space' : 'surroundings', ...ambient },
    { name: 'bunched', ...bunch },
  ].filter((f) => f.value !== 1)
  return {
    value: {
      amps: used.reduce((amps, f) => amps * f.value, baseAmps),
      baseAmps,
      factors: used.map(({ name, value, source }) => ({ name, value, source })),
      source: table.source,
      confirmed: table.confirmed && size.confirmed && used.every((f) => f.confirmed),
      row: row[0],
      columnC,
    },
  }
}

/** The conductor's own row, or the thickest that is no thicker than its copper. */
function rowFor(table: AmpacityTable, size: Size): AmpacityTable['rows'][number] | undefined {
  return (
    table.rows.find(([key]) => key === size.key) ??
    table.rows.findLast(
      ([key]) => (sizeByKey(key)?.sectionMm2 ?? Number.POSITIVE_INFINITY) <= size.sectionMm2,
    )
  )
}
