import { describe, expect, test } from 'vitest'
import { sizeIt } from '../../engine/calc/sizing/sizeit'
import { apply } from '../../engine/edit/apply'
import type { Design } from '../../engine/model/design'
import { analyse } from '../../engine/rules/analyse'
import { COPPER_KG_PER_MM2_M } from '../../engine/tables/copper'
import { type Size, sizesOf } from '../../engine/tables/sizes'
import { type LoadSystem, loadSystem, systemDesign } from '../reference/loadsystem'
import { Random } from '../reference/random'
import { sizedByProgram } from '../reference/sizingprogram'

/** Findings that sizes and ratings decide. */
const DECIDED = ['P1', 'P2', 'P3', 'P5', 'C1', 'C3', 'F1', 'F3', 'E1']

function ratingsIn(design: Design, designation: string): (number | null)[] {
  const { values } = design.parts.find((p) => p.designation === designation)!
  return Array.isArray(values.ways)
    ? values.ways.map((way) => way.ratingA as number | null)
    : [values.ratingA as number | null]
}

/** Two to six loads, so that the program stays small; some of them so far away that no size will do. */
function systemOf(seed: number): LoadSystem {
  const r = new Random(1000 + seed)
  const loads = r.whole(2, 6)
  return loadSystem(seed, {
    loads,
    blocks: r.whole(1, Math.min(3, loads)),
    backs: r.whole(1, 3),
    nested: seed % 2 === 0,
    totalA: r.pick([0.5, 2, 5, 9, 18]) * loads,
    reachM: r.pick([4, 9, 9, 9, 600]),
  })
}

/** Which seeds have an answer. */
const answered = new Map<number, boolean>()

/** HiGHS, as an integer program written from the shape of the system: every size of every conductor a column. */
describe.each(Array.from({ length: 15 }, (_, i) => i))('random systems, part %i', (part) => {
  test.each(Array.from({ length: 10 }, (_, i) => 10 * part + i + 1))(
    '%i',
    (seed) => {
      const s = systemOf(seed)
      const design = systemDesign(s)
      const ours = sizeIt(design, 'all')
      const theirs = sizedByProgram(s)
      const none = theirs === 'no rating' || theirs.leastMm2M === null
      answered.set(seed, !none)
      if (none) {
        if (!('infeasible' in ours)) throw new Error('there is no answer')
        const key = theirs === 'no rating' ? 'rating' : 'drop'
        expect(new Set(ours.infeasible.map((no) => no.key))).toEqual(new Set([key]))
        return
      }
      if ('infeasible' in ours) throw new Error(JSON.stringify(ours.infeasible))
      const result = apply(design, ours.edit)
      if (result.refused) throw new Error(result.why)
      const sized = result.design
      expect(ratingsIn(sized, 'F1')).toEqual([theirs.mainA])
      expect(s.loads.map((x, i) => ratingsIn(sized, `FB${x.block + 1}`)[wayOf(s.loads, i)])).toEqual(
        theirs.loadsA,
      )
      const least = theirs.leastMm2M * COPPER_KG_PER_MM2_M
      expect(ours.copperAfterKg!).toBeLessThanOrEqual(1.01 * least)
      expect(ours.copperAfterKg!).toBeGreaterThanOrEqual(least * (1 - 1e-6))
      expect(ours.kept).toEqual([])
      expect(analyse(sized).findings.filter((f) => DECIDED.includes(f.rule))).toEqual([])
      withLocked(s, sized, new Random(seed))
    },
    120_000,
  )
})

test('at least a hundred have an answer, and some have none', () => {
  const all = [...answered.values()]
  expect(all.filter((has) => has).length).toBeGreaterThanOrEqual(100)
  expect(all.filter((has) => !has).length).toBeGreaterThanOrEqual(5)
  expect(lockedCount).toBeGreaterThanOrEqual(100)
})

/** Designs in which sizes were locked and that were compared. */
let lockedCount = 0

/** Some conductors are locked one or two sizes above what was chosen: they stay, and the rest is the least beside them. */
function withLocked(s: LoadSystem, sized: Design, random: Random): void {
  const series = sizesOf(s.ruleSet.series[0]!)
  const locked = new Map<string, Size>()
  for (let i = random.whole(1, 3); i > 0; i--) {
    const { number, size } = random.pick(sized.conductors)
    const thicker = series[series.findIndex((x) => x.key === size) + random.whole(1, 2)]
    if (thicker) locked.set(number, thicker)
  }
  if (locked.size === 0) return
  const design = {
    ...sized,
    conductors: sized.conductors.map((c) => {
      const size = locked.get(c.number)
      return size ? { ...c, size: size.key, locked: true } : { ...c, size: null }
    }),
  }
  const ours = sizeIt(design, 'all')
  const theirs = sizedByProgram(s, locked)
  if (theirs === 'no rating' || theirs.leastMm2M === null) throw new Error('thicker copper holds less')
  if ('infeasible' in ours) throw new Error(JSON.stringify(ours.infeasible))
  const result = apply(design, ours.edit)
  if (result.refused) throw new Error(result.why)
  for (const c of result.design.conductors) {
    const size = locked.get(c.number)
    if (size) expect(c.size).toBe(size.key)
  }
  const least = theirs.leastMm2M * COPPER_KG_PER_MM2_M
  expect(ours.copperAfterKg!).toBeLessThanOrEqual(1.01 * least)
  expect(ours.copperAfterKg!).toBeGreaterThanOrEqual(least * (1 - 1e-6))
  lockedCount += 1
}

const wayOf = (loads: readonly { block: number }[], i: number): number =>
  loads.slice(0, i).filter((x) => x.block === loads[i]!.block).length
