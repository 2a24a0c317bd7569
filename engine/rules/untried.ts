import { found, type Rule } from './rule'

/**
 * X3: contacts stand in so many combinations that not all were tried; figures that hang on them are not checked. Nor are
 * fault currents through devices where the short circuits to be tried in all of them are too many.
 */
export const untriedPositions: Rule = {
  id: 'X3',
  looksFor: 'switch positions too many to try in every combination',
  check: ({ states, border, answers }) => {
    const ids = [...new Set(states.flatMap((s) => [...s.untried]))]
    const devices = [...answers.faults.devices.values()].flatMap(({ greatest }) =>
      'notChecked' in greatest && greatest.notChecked === 'too-many-positions' ? greatest.parts : [],
    )
    const parts = [...new Set(ids.flatMap((id) => border.branches.get(id)?.part ?? []))]
    const subjects = [...new Set([...parts, ...devices])]
    if (subjects.length === 0) return []
    const facts = devices.length === 0 ? { parts } : { parts, devices: [...new Set(devices)] }
    return [found('X3', 'not-checked', 'method', { parts: subjects }, facts)]
  },
}
