import { expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import { builtEdit, tickEdit } from '../../../engine/edit/bench'
import { bringFrom } from '../../../engine/edit/benchbring'
import { asBuilt, differencesOf } from '../../../engine/edit/benchfacts'
import { stepsFor } from '../../../engine/edit/benchsteps'
import { takeOverEdit } from '../../../engine/edit/benchtake'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { BuiltFact } from '../../../engine/model/bench'
import type { Conductor, Design } from '../../../engine/model/design'
import { writeDesign } from '../../../engine/model/write'
import { analyse } from '../../../engine/rules/analyse'
import { builtFindings } from '../../../engine/rules/builtfindings'
import { SIZES } from '../../../engine/tables/sizes'
import { sentence } from '../../../engine/words/findings'
import { Random } from '../../reference/random'
import { randomDesign } from '../rules/randomdesign'

/** What somebody might record: any size, any length, any terminal that another conductor has. */
function fact(random: Random, d: Design): BuiltFact {
  const other = d.conductors[random.whole(0, d.conductors.length - 1)]!
  switch (random.whole(0, 3)) {
    case 0:
      return { what: 'size', value: SIZES[random.whole(0, SIZES.length - 1)]!.key }
    case 1:
      return { what: 'lengthM', value: random.whole(1, 300) / 10 }
    case 2:
      return { what: 'from', value: other.to }
    default:
      return { what: 'to', value: random.whole(0, 5) === 0 ? null : other.from }
  }
}

/** A design with things recorded on one device, in the order of their minutes. */
function recorded(random: Random, d: Design, by: string): Design {
  let now = d
  for (let minute = 10; minute < 22; minute++) {
    const c: Conductor = d.conductors[random.whole(0, d.conductors.length - 1)]!
    const stamp = { at: `2026-03-04T09:${minute}:00.000Z`, by }
    const steps = stepsFor(now, c)
    const step = steps[random.whole(0, Math.max(0, steps.length - 1))]
    const edit =
      step && random.whole(0, 1) === 0
        ? tickEdit(now, c, step, random.whole(0, 3) > 0, stamp)
        : builtEdit(now, c, fact(random, d), stamp)
    const result = apply(now, edit)
    if (result.refused) throw new Error(result.why)
    now = result.design
  }
  return now
}

test('random designs, randomly built otherwise: read back, checked as built, put into words, taken over', {
  timeout: 120_000,
}, () => {
  let taken = 0
  for (let seed = 900; seed < 930; seed++) {
    const random = new Random(seed)
    const d = randomDesign(random, random.whole(3, 25), seed % 2 ? 'wild' : 'sensible')
    if (d.conductors.length === 0) continue
    const now = recorded(random, d, 'tablet')
    const read = readDesign(writeDesign(now))
    expect(read.problems, `seed ${seed}`).toEqual([])
    expect(read.design?.bench, `seed ${seed}`).toEqual(now.bench)

    const differences = differencesOf(now)
    const built = builtFindings(now, analyse(now).findings)
    expect(built === null, `seed ${seed}`).toBe(differences.length === 0)
    for (const f of built?.worse ?? []) expect(sentence(f, built!.design).text).not.toMatch(/undefined|NaN/)
    expect(differencesOf(asBuilt(now))).toEqual([])

    for (const difference of differences) {
      const result = apply(now, takeOverEdit(difference))
      if (result.refused) continue
      taken += 1
      const left = differencesOf(result.design).map((x) => `${x.conductor} ${x.what}`)
      expect(left, `seed ${seed}`).not.toContain(`${difference.conductor} ${difference.what}`)
    }
  }
  expect(taken).toBeGreaterThan(30)
})

test('two devices that record at random come to the same, whoever opens the other’s file', () => {
  for (let seed = 950; seed < 980; seed++) {
    const random = new Random(seed)
    const d = randomDesign(random, random.whole(3, 15), 'sensible')
    if (d.conductors.length === 0) continue
    const [tablet, phone] = [recorded(random, d, 'tablet'), recorded(random, d, 'phone')]
    const both = (mine: Design, theirs: Design): Design => {
      const brought = bringFrom(mine, theirs)
      if ('refused' in brought) throw new Error(brought.why)
      const result = apply(mine, brought.edit)
      if (result.refused) throw new Error(result.why)
      return result.design
    }
    expect(both(tablet, phone).bench, `seed ${seed}`).toEqual(both(phone, tablet).bench)
    expect(writeDesign(both(tablet, phone))).toBe(writeDesign(both(phone, tablet)))
  }
})
