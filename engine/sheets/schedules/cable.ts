import type { Answers } from '../../calc/answers'
import type { Conductor, Design } from '../../model/design'
import { sizeIn } from '../../model/sizes'
import { colourName } from '../../tables/colours'
import { COPPER_KG_PER_MM2_M } from '../../tables/copper'
import { type Making, stockLength } from '../../tables/making'
import { SIZES, type Size } from '../../tables/sizes'
import type { Metres } from '../../units'
import { natureIn } from '../nature'
import { cutLength, insulationOf } from './conductors'
import { type CuttingPlan, firstFit } from './firstfit'
import { natural } from './schedule'

/** Conductors that are cut from one cable: of one size, colour and insulation. */
export interface Cable {
  readonly key: string
  /** null: not chosen, or not in the tables. */
  readonly size: Size | null
  readonly colour: string
  readonly insulationC: number | null
  readonly stockM: Metres | null
  /** Those of known length, as cut; where the size is not known, none. */
  readonly plan: CuttingPlan<Conductor>
  /** Those that cannot be cut yet. */
  readonly unmeasured: readonly Conductor[]
}

/**
 * Conductors that the workshop cuts, by cable, thinnest first. Data leads come made up and mains is for licensed
 * persons: neither is in it.
 */
export function cablesOf(design: Design, answers: Answers, making: Making): Cable[] {
  const natureOf = natureIn(design, answers)
  const groups = new Map<string, Conductor[]>()
  for (const c of [...design.conductors].sort((a, b) => natural(a.number, b.number))) {
    if (natureOf(c) === 'data' || natureOf(c) === 'mains') continue
    const known = sizeIn(design, c.size)
    const key = `${known?.key ?? 'no size'}/${c.colour}/${insulationOf(design, c)}`
    groups.set(key, [...(groups.get(key) ?? []), c])
  }
  return [...groups]
    .map(([key, conductors]) => cableOf(design, key, conductors, making))
    .sort((a, b) => rank(a) - rank(b) || compare(a.colour, b.colour) || compare(a.key, b.key))
}

function cableOf(design: Design, key: string, conductors: readonly Conductor[], making: Making): Cable {
  const first = conductors[0]!
  const size = sizeIn(design, first.size) ?? null
  const stockM = size === null ? null : stockLength(making, size.sectionMm2)
  const measured = size === null ? [] : conductors.filter((c) => c.lengthM !== null)
  const pieces = measured.map((item) => ({ item, lengthM: cutLength(item.lengthM!, making) }))
  return {
    key,
    size,
    colour: first.colour,
    insulationC: insulationOf(design, first),
    stockM,
    plan: firstFit(pieces, stockM ?? 0),
    unmeasured: conductors.filter((c) => size === null || c.lengthM === null),
  }
}

/** "RD red". */
export const colourWords = (letters: string): string =>
  colourName(letters) === letters ? letters : `${letters} ${colourName(letters)}`

/** Copper of a conductor as drawn, kg: nominal section × length × density of copper. */
export const copperKg = (size: Size, lengthM: Metres): number =>
  size.sectionMm2 * lengthM * COPPER_KG_PER_MM2_M

const rank = ({ size }: Cable): number =>
  size === null ? SIZES.length + 1 : size.own ? SIZES.length : SIZES.indexOf(size)

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
