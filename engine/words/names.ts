import { terminalsIn } from '../edit/terminal'
import type { ConductorId, Design, PartId, TerminalRef } from '../model/design'
import type { Terminal } from '../model/kind'
import type { MaybeUnlimited } from '../units'

/** How a part is called in a sentence: "F3 fridge fuse", or its designation alone. */
export function partName(design: Design, id: PartId): string {
  const part = design.parts.find((p) => p.id === id)
  if (!part) return id
  return part.name === '' ? part.designation : `${part.designation} ${part.name}`
}

export function conductorName(design: Design, id: ConductorId): string {
  return design.conductors.find((c) => c.id === id)?.number ?? id
}

/** The terminal in words with its mark, where the words do not hold it already. */
export function terminalWords({ name, mark }: Terminal): string {
  if (mark === '' || mark === '+' || mark === '−' || mark === '~' || /\d/.test(name) || name.includes(mark))
    return name
  return `${name} (${mark})`
}

/** Where a conductor ends: "F5 Loads, way 4". */
export function endName(design: Design, { part: id, terminal }: TerminalRef): string {
  const part = design.parts.find((p) => p.id === id)
  const known = part && terminalsIn(part)?.find((t) => t.key === terminal)
  return `${partName(design, id)}, ${known ? terminalWords(known) : terminal}`
}

/** "F1, F2 and F3"; more than `most` are counted: "F1, F2 and 7 more". */
export function listed(names: readonly string[], most = 4): string {
  if (names.length === 0) return ''
  if (names.length === 1) return names[0]!
  const shown = names.length > most ? names.slice(0, most - 1) : names.slice(0, -1)
  const rest = names.length - shown.length
  return `${shown.join(', ')} and ${rest === 1 ? names[names.length - 1] : `${rest} more`}`
}

/** "1 port is", "3 ports are": a count with the words for one and for many. */
export const counted = (value: MaybeUnlimited | undefined, one: string, many: string): string =>
  `${figure(value ?? 0, '')} ${value === 1 ? one : many}`

/** A figure as a person reads it: about three digits, no trailing zeros: "85 A", "12.4 A", "0.35 V". */
export function figure(value: MaybeUnlimited, unit: string): string {
  if (value === 'unlimited') return 'unlimited'
  const size = Math.abs(value)
  const digits = size >= 100 ? 0 : size >= 10 ? 1 : 2
  const text = String(Number(value.toFixed(digits)))
  return unit === '' ? text : `${text} ${unit}`
}
