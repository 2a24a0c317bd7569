import { apply } from '../edit/apply'
import type { Edit } from '../edit/edit'
import type { PartId, TerminalRef } from '../model/design'
import { conductorsAt, partById } from '../model/lookup'
import type { Finding } from './finding'
import type { Case } from './rule'

/**
 * The edit that exchanges what is joined at two terminals of a part: certain where each has something and the
 * result can be drawn. Undefined otherwise. Ends are taken over one by one; where that would join the two sides for
 * a moment, the conductors are taken off and drawn anew.
 */
export function exchanged({ design }: Case, part: PartId, a: string, b: string): Finding['fix'] {
  const [atA, atB] = [conductorsAt(design, part, a), conductorsAt(design, part, b)]
  if (atA.length === 0 || atB.length === 0) return undefined
  const swap = (t: TerminalRef): TerminalRef =>
    t.part !== part
      ? t
      : t.terminal === a
        ? { part, terminal: b }
        : t.terminal === b
          ? { part, terminal: a }
          : t
  const moved = [...new Set([...atA, ...atB])]
  const edits: Edit[] = [
    {
      do: 'all',
      edits: moved.flatMap((c) =>
        (['from', 'to'] as const)
          .filter((end) => swap(c[end]) !== c[end])
          .map((end) => ({ do: 'reconnect', conductor: c.id, end, to: swap(c[end]) }) as const),
      ),
    },
    {
      do: 'all',
      edits: [
        { do: 'remove', parts: [], conductors: moved.map((c) => c.id) },
        {
          do: 'add',
          parts: [],
          conductors: moved.map((c) => ({ ...c, from: swap(c.from), to: swap(c.to), path: [] })),
        },
      ],
    },
  ]
  const edit = edits.find((e) => !apply(design, e).refused)
  return edit && { title: `Exchange the conductors of ${partById(design, part)?.designation ?? ''}`, edit }
}
