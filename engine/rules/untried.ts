import { found, type Rule } from './rule'

/** X3: contacts stand in so many combinations that not all were tried; figures that hang on them are not checked. */
export const untriedPositions: Rule = {
  id: 'X3',
  looksFor: 'switch positions too many to try in every combination',
  check: ({ states, border }) => {
    const ids = [...new Set(states.flatMap((s) => [...s.untried]))]
    const parts = [...new Set(ids.flatMap((id) => border.branches.get(id)?.part ?? []))]
    return parts.length === 0 ? [] : [found('X3', 'not-checked', 'method', { parts }, { parts })]
  },
}
