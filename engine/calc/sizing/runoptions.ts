import { plainTerminalsIn } from '../../edit/terminal'
import type { Conductor, Design } from '../../model/design'
import { partById } from '../../model/lookup'
import { sizeIn } from '../../model/sizes'
import { ampacityOf } from '../../tables/ampacity'
import { COPPER_KG_PER_MM2_M } from '../../tables/copper'
import { lugRange } from '../../tables/lugranges'
import { ownSize } from '../../tables/ownsizes'
import { resistancePerMetre } from '../../tables/resistance'
import { leastSectionMm2, type RuleSet } from '../../tables/rulesets'
import { type Size, sizesOf } from '../../tables/sizes'
import { surroundOf } from '../../tables/surround'
import type { Amps, Metres, Ohms } from '../../units'
import { TERMINATION_OHMS } from '../network'
import { sizeRanges } from './sizeranges'
import type { Kilograms, SizeReason } from './sizing'

/** One standard size as it would serve one conductor. */
export interface RunOption {
  readonly size: Size
  /** Ampacity where it runs. */
  readonly amps: Amps
  /** Copper of the whole run; of 1 m where its length is not known. */
  readonly kg: Kilograms
  /** With its terminations, at the rule set's temperature for drop. */
  readonly ohms: Ohms
}

export interface RunOptions {
  /** Thinnest first: more copper, more ampacity, less resistance. */
  readonly options: readonly RunOption[]
  /** So many of them go with lugs for both its terminals. */
  readonly lugged: number
  /** Why there is no thinner one. */
  readonly thinnest: SizeReason
}

type Rated = Pick<RunOption, 'size' | 'amps'>

/** The standard sizes that a conductor may have, under the rule set and with the lugs that its terminals take. */
export function runOptions(design: Design, ruleSet: RuleSet): (c: Conductor) => RunOptions {
  const ranges = sizeRanges(design, ruleSet)
  const { ambientC } = design.settings
  const offered = (design.ownConductors ?? []).filter((own) => own.offered).map(ownSize)
  const sizeOf = (key: string): Size | undefined => sizeIn(design, key)
  const known = new Map<string, readonly Rated[]>()
  const ratedFor = (c: Conductor): readonly Rated[] => {
    const range = ranges(c)
    const key = [range.join(), c.insulationC, c.engineSpace, c.bunched, surroundOf(c)].join(' ')
    const before = known.get(key)
    if (before) return before
    const rated = range
      .flatMap(sizesOf)
      .concat(offered)
      .sort((a, b) => a.sectionMm2 - b.sectionMm2)
      .flatMap((size) => {
        const ampacity = ampacityOf(ruleSet, { ...c, size: size.key }, ambientC, sizeOf)
        return 'value' in ampacity ? [{ size, amps: ampacity.value.amps }] : []
      })
    const inOrder = rated.filter((r) => !r.size.own || rated.every((other) => ordered(r, other)))
    known.set(key, inOrder)
    return inOrder
  }
  return (c) => {
    const all = ratedFor(c)
    const leastMm2 = leastSectionMm2(ruleSet, c.sheathed)
    const lugs = lugsOf(design, c)
    const atLeast = (mm2: number): readonly Rated[] =>
      all.filter(({ size }) => size.sectionMm2 >= mm2 * (1 - 1e-9))
    const thick = atLeast(leastMm2)
    const options = atLeast(Math.max(leastMm2, lugs.leastMm2))
    return {
      options: options.map(({ size, amps }) => ({
        size,
        amps,
        kg: copperKg(size, c.lengthM ?? 1),
        ohms: warmOhms(design, ruleSet, size.key, c.lengthM ?? 1),
      })),
      lugged: options.filter(({ size }) => size.sectionMm2 <= lugs.mostMm2 * (1 + 1e-9)).length,
      thinnest:
        options.length < thick.length
          ? { key: 'lug', leastMm2: lugs.leastMm2 }
          : thick.length < all.length
            ? { key: 'least', leastMm2 }
            : { key: 'thinnest' },
    }
  }
}

/** More copper, no less ampacity and no more resistance: choosing leans on that order, so an own row that breaks it is not offered. */
function ordered(a: Rated, b: Rated): boolean {
  const [thin, thick] = a.size.sectionMm2 <= b.size.sectionMm2 ? [a, b] : [b, a]
  return thin.amps <= thick.amps && thin.size.ohmsPerKm >= thick.size.ohmsPerKm
}

/** Sections for which lugs for both terminals are made. */
function lugsOf(design: Design, c: Conductor): { readonly leastMm2: number; readonly mostMm2: number } {
  let [leastMm2, mostMm2] = [0, Number.POSITIVE_INFINITY]
  for (const end of [c.from, c.to]) {
    const part = partById(design, end.part)
    const stud = part && plainTerminalsIn(part)?.find((t) => t.key === end.terminal)?.stud
    const range = stud === undefined ? undefined : lugRange(stud)
    if (!range) continue
    leastMm2 = Math.max(leastMm2, range.leastMm2)
    mostMm2 = Math.min(mostMm2, range.mostMm2)
  }
  return { leastMm2, mostMm2 }
}

/** Resistance of one conductor with its terminations, at the rule set's temperature for drop. */
export const warmOhms = (
  design: Design,
  ruleSet: RuleSet,
  size: string | null,
  lengthM: Metres | null,
): Ohms =>
  ((size === null
    ? undefined
    : resistancePerMetre(size, ruleSet.dropAtC.value, (key) => sizeIn(design, key))) ?? 0) *
    (lengthM ?? 0) +
  2 * TERMINATION_OHMS

/** Copper of one conductor. */
export const copperKg = (size: Size, lengthM: Metres): Kilograms =>
  COPPER_KG_PER_MM2_M * size.sectionMm2 * lengthM
