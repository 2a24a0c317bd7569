import { exchanged } from './exchange'
import { found, type Rule } from './rule'

/** M4: the shunt is wired the wrong way round: it shows draw as charge. */
export const reversedShunt: Rule = {
  id: 'M4',
  looksFor: 'shunts wired the wrong way round',
  check: (c) =>
    [...c.answers.shunts.values()]
      .filter((shunt) => shunt.reversed)
      .map((shunt) => {
        const branch = [...c.border.branches.values()].find((b) => b.part === shunt.part)?.branch
        const fix = branch && exchanged(c, shunt.part, branch.from, branch.to)
        return found(
          'M4',
          'warning',
          shunt.role === 'load' ? 'load-side-shunt' : 'battery-shunt',
          { parts: [shunt.part] },
          { shunt: shunt.part, role: shunt.role },
          fix ? { fix } : {},
        )
      }),
}
