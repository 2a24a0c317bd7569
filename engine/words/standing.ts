import { standingOf } from '../calc/compare/standing'
import type { Design } from '../model/design'

/** What stands in the title block, and on screen: nobody is to take a print that was never issued for an issued one. */
export interface StandingWords {
  /** "B", "after B". */
  readonly revision: string
  /** In a sentence: "revision B", "the state after revision B". Empty: it has no number yet. */
  readonly called: string
  readonly status: string
  readonly date: string
  readonly issued: boolean
}

/** `date` stands where nothing has been issued. */
export function standingWords(design: Design, date = design.settings.date): StandingWords {
  const standing = standingOf(design)
  switch (standing.is) {
    case 'never issued':
      return {
        revision: design.settings.revision,
        called: design.settings.revision && `draft ${design.settings.revision}`,
        status: 'Not issued',
        date,
        issued: false,
      }
    case 'issued':
      return {
        revision: standing.revision.number,
        called: `revision ${standing.revision.number}`,
        status: 'Issued',
        date: standing.revision.date,
        issued: true,
      }
    case 'changed': {
      const { number, date: then } = standing.since
      const status = standing.damaged
        ? `Not issued; ${number} is damaged`
        : `Changed since ${number}, not issued`
      return {
        revision: `after ${number}`,
        called: `the state after revision ${number}`,
        status,
        date: `${number}: ${then}`,
        issued: false,
      }
    }
  }
}
