import { standingOf } from '../../calc/compare/standing'
import type { Design } from '../../model/design'
import type { HandoverWords } from './language'

/** Which revision it is; what was not issued, or was changed since, says so. Empty: it has no number. */
export function revisionSaid(design: Design, { cover }: HandoverWords): string {
  const standing = standingOf(design)
  switch (standing.is) {
    case 'issued':
      return standing.revision.number
    case 'changed':
      return cover.changedSince(standing.since.number)
    case 'never issued':
      return design.settings.revision === '' ? '' : cover.notIssued(design.settings.revision)
  }
}
