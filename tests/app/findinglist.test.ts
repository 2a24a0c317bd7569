import { expect, test } from 'vitest'
import { listed } from '../../app/panels/findinglist'
import type { Finding, Level } from '../../engine'

const finding = (rule: string, level: Level, n: number): Finding => ({
  key: `${rule}-${n}`,
  rule,
  level,
  parts: [],
  conductors: [`c${n}`],
  source: '',
  facts: {},
})
const some = (rule: string, level: Level, n: number) =>
  Array.from({ length: n }, (_, i) => finding(rule, level, i))
const titleOf = (f: Finding) => f.rule

const shape = (findings: readonly Finding[], only: Level | null = null) =>
  listed(findings, only, titleOf).map((l) =>
    l.is === 'one' ? l.finding.key : `${l.findings.length} × ${l.findings[0]!.rule}`,
  )

test('the gravest stand first, and dangers and warnings stand each by itself however many they are', () => {
  expect(
    shape([...some('W', 'warning', 4), ...some('X', 'not-checked', 1), ...some('P', 'danger', 5)]),
  ).toEqual(['P-0', 'P-1', 'P-2', 'P-3', 'P-4', 'W-0', 'W-1', 'W-2', 'W-3', 'X-0'])
})

test.each(['note', 'not-checked'] as const)('more than three (%s) of one title are one row', (level) => {
  expect(shape(some('A', level, 4))).toEqual(['4 × A'])
})

test('more than three checks not made for one reason are one row; three are three', () => {
  expect(shape([...some('A', 'not-checked', 4), ...some('B', 'not-checked', 3)])).toEqual([
    '4 × A',
    'B-0',
    'B-1',
    'B-2',
  ])
})

test('no finding is lost or told twice, whatever the level asked for', () => {
  const all = [...some('A', 'not-checked', 9), ...some('B', 'warning', 2), ...some('C', 'note', 2)]
  const keys = (only: Level | null) =>
    listed(all, only, titleOf).flatMap((l) =>
      l.is === 'one' ? [l.finding.key] : l.findings.map((f) => f.key),
    )
  expect(keys(null).toSorted()).toEqual(all.map((f) => f.key).toSorted())
  expect(keys('warning')).toEqual(['B-0', 'B-1'])
})
