import type { ConductorId } from '../model/design'
import type { Answers } from './answers'

/** Conductors without protection against a source without limit: while there is one, a return may have no limit either. O(conductors). */
export const bareFeeds = ({ runs }: Pick<Answers, 'runs'>): ConductorId[] =>
  [...runs].flatMap(([id, { verdict }]) =>
    'value' in verdict && verdict.value === 'unprotected' ? [id] : [],
  )
