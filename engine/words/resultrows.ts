import type { Answer } from '../calc/answers'
import type { ResultChanges } from '../calc/compare/results'
import type { Design } from '../model/design'
import type { Finding } from '../rules/finding'
import type { MaybeUnlimited } from '../units'
import type { ChangeRow } from './changerow'
import { LEVEL_WORDS, sentence } from './findings'
import { conductorName, figure } from './names'

/** What differs in the results of two states, in words. */
export function resultRows(
  { currents, newFindings, goneFindings, otherLevel }: ResultChanges<Finding>,
  before: Design,
  after: Design,
): readonly ChangeRow[] {
  const finding = (
    what: 'added' | 'removed' | 'changed',
    f: Finding,
    design: Design,
    first: string,
  ): ChangeRow => {
    const { title, text } = sentence(f, design)
    const { parts, conductors } = f
    const name = `${LEVEL_WORDS[f.level]}: ${title}`
    return {
      key: `${what} finding ${f.key}`,
      group: 'findings',
      what,
      name,
      lines: [first + text],
      parts,
      conductors,
      onSheet: [],
    }
  }
  return [
    ...currents.map(
      ({ conductor, before: a, after: b }): ChangeRow => ({
        key: `current ${conductor}`,
        group: 'currents',
        what: 'changed',
        name: conductorName(after, conductor),
        lines: [`${amount(a)} → ${amount(b)}`],
        parts: [],
        conductors: [conductor],
        onSheet: [],
      }),
    ),
    ...newFindings.map((f) => finding('added', f, after, '')),
    ...otherLevel.map(({ before: then, after: now }) =>
      finding('changed', now, after, `${LEVEL_WORDS[then.level]} → ${LEVEL_WORDS[now.level]}. `),
    ),
    ...goneFindings.map((f) => finding('removed', f, before, '')),
  ]
}

const amount = (answer: Answer<MaybeUnlimited>): string =>
  'value' in answer ? figure(answer.value, 'A') : 'not checked'
