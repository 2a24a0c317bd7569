import { expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import type { Edit } from '../../../engine/edit/edit'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Accepted, Design } from '../../../engine/model/design'
import type { Level } from '../../../engine/model/level'
import { writeDesign } from '../../../engine/model/write'
import { sortAccepted } from '../../../engine/rules/accepted'
import { analyse } from '../../../engine/rules/analyse'
import type { Finding } from '../../../engine/rules/finding'
import { design, partNamed } from '../../build'

/** A tap without a fuse: one danger at the least. */
const tap = design({ systemV: 12 })
  .part('battery', 'G1', { dischargeA: 100 })
  .part('load', 'E1', { currentA: 5 })
  .join('G1.+', 'E1.+', { size: '2.5mm2', lengthM: 3 })
  .join('E1.-', 'G1.-', { size: '2.5mm2', lengthM: 3, returnOf: 'W1' })
  .build()

const { findings } = analyse(tap)
const danger = findings.find((f) => f.level === 'danger')!
const yes: Accepted = {
  key: danger.key,
  level: danger.level,
  reason: 'Bench set-up, never left alone',
  by: 'R. Hale',
  date: '2026-03-04',
}

function edited(edit: Edit, of: Design = tap): Design {
  const result = apply(of, edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}
const refusal = (edit: Edit, of: Design = tap) => {
  const result = apply(of, edit)
  return result.refused ? result.code : null
}
const accepted = edited({ do: 'accept', accepted: yes })

test('an accepted finding leaves the open ones, and comes back when it is taken back', () => {
  const sorted = sortAccepted(accepted, findings)
  expect(sorted.accepted).toEqual([{ finding: danger, accepted: yes }])
  expect(sorted.open).toEqual(findings.filter((f) => f !== danger))
  const back = edited({ do: 'unaccept', key: yes.key }, accepted)
  expect(back).toEqual(tap)
  expect(sortAccepted(back, findings).open).toEqual(findings)
})

test('the figures do not hang on what is accepted', () => {
  expect(analyse(accepted)).toEqual(analyse(tap))
})

test('graver than it was, a finding is open again; milder, it stays accepted', () => {
  const grave: readonly Level[] = ['note', 'not-checked', 'warning', 'danger']
  for (const [was, then] of grave.entries())
    for (const [is, now] of grave.entries()) {
      const finding: Finding = { ...danger, level: now }
      const of: Design = { ...tap, accepted: [{ ...yes, level: then }] }
      expect(sortAccepted(of, [finding]).open.length === 1, `${then} to ${now}`).toBe(is > was)
    }
  expect(sortAccepted(accepted, [{ ...danger, key: `${danger.key} x` }]).open).toHaveLength(1)
})

test('further beyond its limit than it was, it is open again; nearer to it, it stays accepted', () => {
  const opens = (then: number | 'unlimited', now: number | 'unlimited', limit?: number) => {
    const finding: Finding = {
      ...danger,
      actual: { value: now, unit: 'A' },
      ...(limit === undefined ? {} : { limit: { value: limit, unit: 'A' } }),
    }
    const of: Design = { ...tap, accepted: [{ ...yes, actual: then }] }
    const { limit: _none, ...bare } = finding
    return sortAccepted(of, [limit === undefined ? bare : finding]).open.length === 1
  }
  expect([opens(4, 4, 3), opens(4, 9, 3), opens(4, 3.5, 3), opens(4, 4.001, 3)]).toEqual([
    false,
    true,
    false,
    false,
  ])
  // A limit from below: 10 kA is asked for, 6 kA was accepted.
  expect([opens(6, 5, 10), opens(6, 8, 10)]).toEqual([true, false])
  expect([opens(4, 'unlimited', 3), opens('unlimited', 4, 3), opens('unlimited', 'unlimited')]).toEqual([
    true,
    false,
    false,
  ])
  expect([opens(4, 4), opens(4, 5), opens(4, 3)]).toEqual([false, true, true])
})

test('without a reason, or with a date that is none, it is refused', () => {
  expect(refusal({ do: 'accept', accepted: { ...yes, reason: ' \n' } })).toBe('no-reason')
  expect(refusal({ do: 'accept', accepted: { ...yes, reason: 'x'.repeat(2001) } })).toBe('long-reason')
  expect(refusal({ do: 'accept', accepted: { ...yes, date: '4 March' } })).toBe('date')
  expect(refusal({ do: 'unaccept', key: yes.key })).toBe('not-accepted')
})

test('a second reason replaces the first', () => {
  const again = edited({ do: 'accept', accepted: { ...yes, reason: 'Measured' } }, accepted)
  expect(again.accepted).toEqual([{ ...yes, reason: 'Measured' }])
})

test('what leaves the drawing takes its acceptances along, as its id may be given out again', () => {
  const without = edited({ do: 'remove', parts: [partNamed(tap, 'E1').id], conductors: [] }, accepted)
  expect(without.accepted).toBeUndefined()
})

test('it is written and read back; a faulty record is told and its finding stands open', () => {
  const text = writeDesign(accepted)
  expect(readDesign(text)).toEqual({ design: accepted, problems: [] })
  const faulty = readDesign(text.replace('"reason": "Bench set-up, never left alone"', '"reason": "  "'))
  expect(faulty.problems.map((p) => p.path)).toEqual(['accepted[0].reason'])
  expect(sortAccepted(faulty.design!, findings).open).toContainEqual(danger)
  const twice = readDesign(writeDesign({ ...accepted, accepted: [yes, { ...yes, reason: 'Other' }] }))
  expect(twice.problems.map((p) => p.path)).toEqual(['accepted[1].key'])
  expect(twice.design!.accepted).toEqual([yes])
  expect(readDesign(text.replace(/"accepted": \[[\s\S]*\]/, '"accepted": 4')).problems[0]!.path).toBe(
    'accepted',
  )
})
