import type { Finding, Level } from '../../engine'
import { LEVELS } from '../store/tally'

/** Findings that stand alone; notes, and checks that could not be made, that are the same in many places. */
export type Listed =
  | { readonly is: 'one'; readonly finding: Finding }
  | { readonly is: 'many'; readonly title: string; readonly findings: readonly Finding[] }

/** More of a kind than this are told as one. */
const MOST = 3

/**
 * The order of the list: the gravest first. Of notes and of what is not checked, what has one title in many places is
 * one row; each danger and each warning stands by itself.
 */
export function listed(
  findings: readonly Finding[],
  only: Level | null,
  titleOf: (f: Finding) => string,
): readonly Listed[] {
  return LEVELS.filter((level) => only === null || only === level).flatMap((level) => {
    const of = findings.filter((f) => f.level === level)
    return level === 'note' || level === 'not-checked' ? together(of, titleOf) : of.map(one)
  })
}

const one = (finding: Finding): Listed => ({ is: 'one', finding })

function together(findings: readonly Finding[], titleOf: (f: Finding) => string): readonly Listed[] {
  const byTitle = new Map<string, Finding[]>()
  for (const f of findings) {
    const title = `${f.rule} ${titleOf(f)}`
    byTitle.set(title, [...(byTitle.get(title) ?? []), f])
  }
  return [...byTitle].flatMap(([title, of]) =>
    of.length > MOST ? [{ is: 'many' as const, title, findings: of }] : of.map(one),
  )
}
