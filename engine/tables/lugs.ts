import { type Figured, unconfirmed } from './figure'

/**
 * Clearance hole of a lug for a stud, mm, after DIN 46234 and DIN 46235. From memory, trade practice; for M6 the
 * standards differ (6.4 and 6.5 mm).
 */
const HOLES: ReadonlyMap<string, Figured> = new Map(
  (
    [
      ['M4', 4.3],
      ['M5', 5.3],
      ['M6', 6.4],
      ['M8', 8.4],
      ['M10', 10.5],
      ['M12', 13],
    ] as const
  ).map(([stud, mm]) => [stud, unconfirmed(mm, 'din-46234')]),
)

/** Hole of the lug that goes on a stud ("M8"); undefined for what is no stud, or one that the table lacks. */
export const lugHole = (stud: string): Figured | undefined => HOLES.get(stud)
