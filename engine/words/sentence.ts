import type { Design } from '../model/design'
import type { Finding } from '../rules/finding'

/** A finding in words for a practitioner, the same on screen and on paper. */
export interface Sentence {
  /** A few words: "No protection". */
  readonly title: string
  /** What is wrong, where, with figures. One or two plain sentences. */
  readonly text: string
  /** What to do about it. One plain sentence. */
  readonly todo: string
}

/** Turns the facts of one rule into words. */
export type Wording = (finding: Finding, design: Design) => Sentence

/** A fact that is a list of ids or words; an absent one is an empty list. */
export function listFact(finding: Finding, name: string): readonly string[] {
  const fact = finding.facts[name]
  return Array.isArray(fact) ? (fact as readonly string[]) : []
}

export function textFact(finding: Finding, name: string): string {
  const fact = finding.facts[name]
  return fact === undefined || Array.isArray(fact) ? '' : String(fact)
}
