import { terminalsIn } from '../../edit/terminal'
import type { Design, Part, TerminalRef } from '../../model/design'
import type { Terminal } from '../../model/kind'
import { partById } from '../../model/lookup'
import { terminalWords } from '../../words/names'

/** One end of a conductor in words. */
export interface End {
  /** "F5 Loads block". */
  readonly part: string
  /** "way 4", "stud 2", "contact, feed (30)". */
  readonly terminal: string
  /** "F5:4". */
  readonly short: string
  /** Form of the terminal: "M8", "blade 6.3"; null: nothing is stated. */
  readonly stud: string | null
  /** In words, where it sits: "under bench". */
  readonly location: string
}

export function endOf(design: Design, ref: TerminalRef): End {
  const part = partById(design, ref.part)
  if (!part) return { part: ref.part, terminal: ref.terminal, short: ref.part, stud: null, location: '' }
  const all = terminalsIn(part) ?? []
  const terminal = all.find((t) => t.key === ref.terminal)
  return {
    part: titleOf(part),
    terminal: terminal ? terminalWords(terminal) : ref.terminal,
    short: `${part.designation}:${terminal ? shortMark(terminal, all) : ref.terminal}`,
    stud: terminal?.stud ?? null,
    location: part.location,
  }
}

export const titleOf = ({ designation, name }: Part): string =>
  name === '' ? designation : `${designation} ${name}`

/** The printed mark where it names one terminal of the part; the number of a stud; otherwise the key, with a minus sign for its hyphen. */
export function shortMark(terminal: Terminal, all: readonly Terminal[]): string {
  const { name, mark, key } = terminal
  if (mark !== '' && all.filter((t) => t.mark === mark).length === 1) return mark
  const number = /\d+$/.exec(name)?.[0]
  return number !== undefined && all.every((t) => t.name === name || !t.name.endsWith(` ${number}`))
    ? number
    : key.replace(/-$/, '−')
}
