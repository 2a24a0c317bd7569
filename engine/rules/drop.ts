import type { Drop, DropAnswer } from '../calc/answers'
import type { ConductorId } from '../model/design'
import { found, type Rule } from './rule'

/** A load whose drop is more than it is allowed. */
interface Beyond {
  readonly answer: DropAnswer
  readonly drop: Drop
  /** The conductor that takes most of it, and whether all is well without what that one takes. */
  readonly worst: Drop['conductors'][number] | undefined
  readonly alone: boolean
}

/**
 * E1: the voltage drop of a load, out and return, is more than its class of circuit is allowed. Loads that one conductor is
 * the cause of, for they are within without what it takes, are one finding, the worst of them first: a shared run that is
 * too thin, or a length typed wrong.
 */
export const drop: Rule = {
  id: 'E1',
  looksFor: 'loads with more voltage drop than their class of circuit is allowed',
  check: ({ answers, ruleSet }) =>
    grouped([...answers.drops.values()].flatMap(beyond)).map((all) => {
      const [{ answer, drop, worst }, ...others] = all as [Beyond, ...Beyond[]]
      return found(
        'E1',
        'warning',
        ruleSet.dropPercent[answer.service].source,
        { parts: [...new Set(all.map((b) => b.answer.part))], conductors: worst ? [worst.conductor] : [] },
        {
          part: answer.part,
          others: [...new Set(others.map((b) => b.answer.part))].filter((id) => id !== answer.part),
          volts: drop.conductorsV,
          ofV: drop.ofV,
          service: answer.service,
          ...(worst ? { worst: worst.conductor, worstV: worst.volts } : {}),
        },
        {
          about: answer.device,
          actual: { value: drop.percent, unit: '%' },
          limit: { value: answer.limitPercent, unit: '%' },
        },
      )
    }),
}

function beyond(answer: DropAnswer): Beyond[] {
  if (!('value' in answer.drop)) return []
  const drop = answer.drop.value
  const { percent, conductorsV, conductors } = drop
  const limit = answer.limitPercent * (1 + 1e-9)
  if (percent <= limit) return []
  const worst = conductors[0]
  const without = worst ? percent * (1 - worst.volts / conductorsV) : percent
  return [{ answer, drop, worst, alone: without <= limit }]
}

/** Loads of one cause together, the one furthest beyond its limit first; every other by itself. */
function grouped(all: readonly Beyond[]): Beyond[][] {
  const byCause = new Map<ConductorId | Beyond, Beyond[]>()
  for (const b of [...all].sort((x, y) => excess(y) - excess(x))) {
    const cause = b.alone && b.worst ? b.worst.conductor : b
    byCause.set(cause, [...(byCause.get(cause) ?? []), b])
  }
  return [...byCause.values()]
}

const excess = ({ drop, answer }: Beyond): number => drop.percent / answer.limitPercent
