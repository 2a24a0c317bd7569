import type { Answers } from '../calc/answers'
import type { Border } from '../calc/network'
import type { Prepared } from '../calc/prepare'
import type { State } from '../calc/solved'
import type { Design } from '../model/design'
import type { Pole } from '../model/kind'
import type { RuleSet } from '../tables/rulesets'
import type { Finding, Level } from './finding'

/** What every rule looks at: the design, its network with every contact closed, its positions, and the answers. */
export interface Case {
  readonly design: Design
  readonly border: Border
  readonly p: Prepared
  /** One for each position of the contacts that can make a difference. */
  readonly states: readonly State[]
  readonly poles: ReadonlyMap<string, Pole>
  readonly answers: Answers
  readonly ruleSet: RuleSet
}

/** One rule, one file. The id is permanent: printed on sheets, kept in files, never reused. */
export interface Rule {
  readonly id: string
  /** What the rule looks for, in a few words, for the list of checks made. */
  readonly looksFor: string
  readonly check: (c: Case) => readonly Finding[]
}

/** A finding with its key built from rule and subjects. */
export function found(
  rule: string,
  level: Level,
  source: string,
  subjects: { parts?: readonly string[]; conductors?: readonly string[] },
  facts: Finding['facts'],
  more: Pick<Finding, 'actual' | 'limit' | 'fix'> & { readonly about?: string } = {},
): Finding {
  const { about, ...figures } = more
  const parts = subjects.parts ?? []
  const conductors = subjects.conductors ?? []
  const key = [rule, ...conductors, ...parts, ...(about === undefined ? [] : [about])].join(' ')
  return { key, rule, level, source, parts, conductors, facts, ...figures }
}
