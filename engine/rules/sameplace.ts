import { found, type Rule } from './rule'

/** J8: both ends of a conductor are one node: it carries nothing, whatever it was meant to do. */
export const samePlace: Rule = {
  id: 'J8',
  looksFor: 'conductors with both ends at one place',
  check: ({ border }) =>
    border.form.branches.flatMap((b) =>
      b.kind === 'conductor' && b.from === b.to
        ? [found('J8', 'note', 'method', { conductors: [b.id] }, { conductor: b.id })]
        : [],
    ),
}
