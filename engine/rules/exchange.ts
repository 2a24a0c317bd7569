import { apply } from '../edit/apply'
import type { Edit } from '../edit/edit'
import type { PartId, TerminalRef } from '../model/design'
import { conductorsAt, partById } from '../model/lookup'
import type { Finding } from './finding'
import type { Case } from './rule'

/**
 * The edit that exchanges what is joined at two terminals of a part: certain where each has something and the
 * result can be drawn. Undefined otherwise.
 */
export function exchanged({ design }: Case, part: PartId, a: string, b: string): Finding['fix'] {
  const moves = (from: string, to: string): Edit[] =>
    conductorsAt(design, part, from).flatMap((c) =>
      (['from', 'to'] as const)
        .filter((end) => isAt(c[end], part, from))
        .map((end) => ({ do: 'reconnect', conductor: c.id, end, to: { part, terminal: to } }) as const),
    )
  const there = moves(a, b)
  const back = moves(b, a)
  if (there.length === 0 || back.length === 0) return undefined
  const edit: Edit = { do: 'all', edits: [...there, ...back] }
  if (apply(design, edit).refused) return undefined
  return { title: `Exchange the conductors of ${partById(design, part)?.designation ?? ''}`, edit }
}

const isAt = (t: TerminalRef, part: PartId, terminal: string): boolean =>
  t.part === part && t.terminal === terminal
