import {
  type ConductorId,
  conductorById,
  joinEdit,
  partById,
  type TerminalRef,
  terminalsOf,
} from '../../engine'
import { doEdit, useOpen } from './open'
import { refuse, say } from './say'
import { select } from './view'

/** The join that was refused only because the two are joined already: asked for again, it is meant. */
let askedTwice: string | null = null

/** Joins two terminals, with the return where the feed calls for one; or says why not. Returns what was drawn. */
export function join(from: TerminalRef, to: TerminalRef): ConductorId | null {
  const { design } = useOpen.getState()
  const key = `${from.part} ${from.terminal} ${to.part} ${to.terminal}`
  const edit = joinEdit(design, from, to, { parallel: askedTwice === key })
  askedTwice = null
  if ('refused' in edit) {
    if (edit.code === 'already-joined') askedTwice = key
    refuse(edit.code === 'already-joined' ? `${edit.why} Join them again to lay it.` : edit.why)
    return null
  }
  if (!doEdit(`Join ${terminalName(from)} to ${terminalName(to)}`, edit)) return null
  const made = useOpen.getState().design.conductors.filter((c) => !conductorById(design, c.id))
  const feed = made.find((c) => c.returnOf === null)
  if (feed) select([], [feed.id])
  say(`Joined: ${made.map((c) => c.number).join(' and ')}. ${edit.why}`.trim())
  return feed?.id ?? null
}

/** "F1 way 3" */
export function terminalName({ part, terminal }: TerminalRef): string {
  const { design } = useOpen.getState()
  const p = partById(design, part)
  if (!p) return part
  const name = terminalsOf(p, design.conductors).find((t) => t.key === terminal)?.name
  return `${p.designation} ${name || terminal}`
}
