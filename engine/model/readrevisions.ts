import type { Revision } from './design'
import { foundWords, type ProblemList } from './problems'
import { readKeyed } from './readkeyed'
import { frozenText } from './revision'
import { revisionSchema } from './schemarevision'

/**
 * Issued revisions; undefined: the file has none. One that does not stand up to its digest is told and kept: it is
 * listed, and nothing is made from it.
 */
export function readRevisions(data: unknown, problems: ProblemList): readonly Revision[] | undefined {
  const revisions = readKeyed('revisions', 'number', revisionSchema, [], data, problems)
  if (!Array.isArray(data)) return revisions
  for (const revision of revisions ?? [])
    if (frozenText(revision) === null)
      problems.add(
        ['revisions', data.findIndex((raw) => raw?.number === revision.number), 'frozen'],
        `revision ${revision.number} as it was issued`,
        foundWords(revision.frozen).replace(/^the text/, 'text that was changed or damaged since:'),
      )
  return revisions
}
