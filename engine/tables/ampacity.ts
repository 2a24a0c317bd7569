import type { Amps, Celsius } from '../units'
import type { AmpacityTable } from './ampacitytables'
import type { RuleSet } from './rulesets'
import { type Size, type SizeLookup, sizeByKey } from './sizes'
import { SURROUNDS, type Surrounded, surroundOf } from './surround'

/** Ampacity with the rows and factors it came from. */
export interface Ampacity {
  readonly amps: Amps
  readonly baseAmps: Amps
  readonly factors: readonly { readonly name: string; readonly value: number; readonly source: string }[]
  readonly source: string
  /** False where a figure could not be confirmed; marked so on screen and paper. */
  readonly confirmed: boolean
  /** Row and column of the table that was used: they may lie below the conductor's own size and insulation. The key of an own conductor that states its current. */
  readonly row: string
  readonly columnC: Celsius
}

/** What of a conductor its ampacity depends on; a `Conductor` fits. */
export interface AmpacitySpec extends Surrounded {
  readonly size: string | null
  readonly insulationC: Celsius | null
  readonly engineSpace: boolean
  readonly bunched: number
}

/** Name of the factor for the temperature of the design, which every conductor has alike. */
export const AMBIENT = 'ambient temperature'

export type AmpacityAnswer = { readonly value: Ampacity } | { readonly notChecked: string }

/**
 * Ampacity of a conductor under a rule set. Nothing is interpolated: a size that the table lacks takes the next
 * thinner row by true cross-section, an insulation between two columns the cooler one, both careful readings.
 * The gaps give a reason: no size, thinner than the thinnest row, an insulation cooler than the table's coolest,
 * surroundings or a bunch beyond the factors. An own conductor that states its current takes that in place of a row.
 * O(rows).
 */
export function ampacityOf(
  ruleSet: RuleSet,
  spec: AmpacitySpec,
  ambientC: Celsius,
  sizeOf: SizeLookup = sizeByKey,
): AmpacityAnswer {
  if (spec.size === null) return { notChecked: 'no size is chosen' }
  const size = sizeOf(spec.size)
  if (!size) return { notChecked: `the size "${spec.size}" is not in the catalogue` }
  const insulationC = spec.insulationC ?? size.own?.insulationC ?? ruleSet.insulationC
  const table = ruleSet.ampacity
  const column = table.insulationC.findLastIndex((c) => c <= insulationC)
  if (column < 0) return { notChecked: `the table has no column for insulation of ${insulationC} °C` }
  const ownA = size.own?.amps ?? null
  const row = ownA === null ? rowFor(table, size) : undefined
  if (ownA === null && !row) return { notChecked: `the table has no row as thin as ${size.name}` }

  const columnC = table.insulationC[column]!
  const ambient = ruleSet.ambientFactor(ambientC, columnC, spec.engineSpace)
  if (!ambient)
    return { notChecked: `the rule set has no factor for ${ambientC} °C around ${columnC} °C insulation` }
  const bunch = ruleSet.bunchFactor(spec.bunched)
  if (!bunch) return { notChecked: `the rule set has no factor for ${spec.bunched} conductors bunched` }
  const around = surroundOf(spec)
  const surround = ruleSet.surroundFactor(around)
  const baseAmps = ownA ?? row![1][column]!
  const used = [
    { name: spec.engineSpace ? 'engine space' : AMBIENT, ...ambient },
    { name: 'bunched', ...bunch },
    { name: SURROUNDS[around], ...surround },
  ].filter((f) => f.value !== 1)
  return {
    value: {
      amps: used.reduce((amps, f) => amps * f.value, baseAmps),
      baseAmps,
      factors: used.map(({ name, value, source }) => ({ name, value, source })),
      source: ownA === null ? table.source : size.source,
      confirmed: (table.confirmed || ownA !== null) && size.confirmed && used.every((f) => f.confirmed),
      row: row?.[0] ?? size.key,
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
