import { terminalsIn } from '../edit/terminal'
import type { Design, TerminalRef } from '../model/design'
import { partById } from '../model/lookup'
import { shortMark } from './schedules/ends'

/**
 * An end in as few words as find it at the part: "W4:12", "K1:87" by what is printed there; "T5 +", "T3 PV −" where
 * only the pole is; otherwise by name, "F7 return 1".
 */
export function endTag(design: Design, { part: id, terminal: key }: TerminalRef): string {
  const part = partById(design, id)
  if (!part) return `${id}:${key}`
  const all = terminalsIn(part) ?? []
  const terminal = all.find((t) => t.key === key)
  if (!terminal) return `${part.designation}:${key}`
  const pole = byPole(terminal.name)
  if (pole !== null) return `${part.designation} ${pole}`
  const mark = shortMark(terminal, all)
  return mark === key && !/^\d+$/.test(mark) && mark !== terminal.mark
    ? `${part.designation} ${terminal.name}`
    : `${part.designation}:${mark}`
}

/** "positive" → "+", "PV, negative" → "PV −"; null: the name tells no pole. */
function byPole(name: string): string | null {
  const found = /^(?:(.*), )?(positive|negative)$/.exec(name)
  if (!found) return null
  const sign = found[2] === 'positive' ? '+' : '−'
  return found[1] === undefined ? sign : `${found[1]} ${sign}`
}
