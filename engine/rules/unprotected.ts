import { bareRoots } from '../calc/bareroots'
import type { ConductorId } from '../model/design'
import { conductorById } from '../model/lookup'
import { type Case, found, type Rule } from './rule'

/**
 * P1: an unlimited source reaches an end of a feed through no protective device. One missing device is one finding: at the
 * first unprotected conductor on the way from the source, with those behind it and the returns that have no limit for it.
 */
export const unprotected: Rule = {
  id: 'P1',
  looksFor: 'conductors that a source reaches through no protective device',
  check: (c) => {
    const returns = returnsBy(c)
    return [...bareRoots(c.answers.runs)].flatMap(
      ([root, all]) => findingAt(c, root, all, returns.get(root) ?? []) ?? [],
    )
  },
}

function findingAt(
  { design, answers, ruleSet }: Case,
  root: ConductorId,
  all: readonly ConductorId[],
  returns: readonly ConductorId[],
): ReturnType<typeof found> | null {
  const conductor = conductorById(design, root)
  const run = answers.runs.get(root)
  if (!conductor || !run?.cause) return null
  const { source, way } = run.cause
  return found(
    'P1',
    'danger',
    (conductor.sheathed ? ruleSet.nearSource.sheathed : ruleSet.nearSource.open).source,
    { conductors: all, parts: source === null ? [] : [source] },
    {
      conductor: root,
      behind: all.slice(1),
      returns,
      source: source ?? '',
      way,
      ...(run.aheadM === null ? {} : { aheadM: run.aheadM }),
      ...(run.aheadAllowedM === null ? {} : { allowedM: run.aheadAllowedM }),
    },
    { actual: { value: 'unlimited', unit: 'A' } },
  )
}

/** Returns without limit by the bare feeds that are the cause. */
function returnsBy({ answers }: Case): Map<ConductorId, ConductorId[]> {
  const returns = new Map<ConductorId, ConductorId[]>()
  for (const [id, { sustained }] of answers.runs)
    if (sustained && 'value' in sustained)
      for (const root of sustained.value.bare) returns.set(root, [...(returns.get(root) ?? []), id])
  return returns
}
