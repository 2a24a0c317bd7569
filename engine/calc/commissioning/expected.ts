import type { ExpectedThen } from '../../model/commissioning'
import { roundTo } from './expect'
import type { Expected } from './step'

/** What is expected once another reading of the step is known that it is held against. */
export function heldTo(expected: Expected, other: number | undefined): Expected {
  if (expected.is !== 'figure' || !expected.against || other === undefined) return expected
  const { times, plus, share, amount } = expected.against
  const usual = times * other + plus
  const off = share * Math.abs(other) + amount
  const { unit } = expected
  return {
    ...expected,
    usual: roundTo(usual, unit),
    least: roundTo(usual - off, unit),
    most: roundTo(usual + off, unit),
  }
}

/** As an entry keeps it. null: nothing is known to expect. */
export function asThen(expected: Expected): ExpectedThen | null {
  if (expected.is === 'not-known') return null
  if (expected.is === 'seen') return { seen: expected.what }
  return {
    ...(expected.least === null ? {} : { least: expected.least }),
    ...(expected.most === null ? {} : { most: expected.most }),
  }
}

export const isSameExpectation = (a: ExpectedThen | null, b: ExpectedThen | null): boolean =>
  a === null || b === null ? a === b : a.least === b.least && a.most === b.most && a.seen === b.seen
