import type { OwnConductor } from '../tables/ownsizes'
import type { ProblemList } from './problems'
import { readKeyed } from './readkeyed'
import { ownConductorSchema } from './schema'

/** The designer's own conductors; a faulty section costs the row, any other faulty figure only itself. undefined: none. */
export const readOwnConductors = (
  data: unknown,
  problems: ProblemList,
): readonly OwnConductor[] | undefined =>
  readKeyed(
    'ownConductors',
    'key',
    ownConductorSchema,
    ['ohmsPerKm', 'amps', 'insulationC', 'offered'],
    data,
    problems,
  )
