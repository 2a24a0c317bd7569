import type { Finding, Level } from '../../engine'

/** The gravest first. */
export const LEVELS: readonly Level[] = ['danger', 'warning', 'note', 'not-checked']

export function countByLevel(findings: readonly Finding[]): Readonly<Record<Level, number>> {
  const tally = { danger: 0, warning: 0, note: 0, 'not-checked': 0 }
  for (const f of findings) tally[f.level]++
  return tally
}

/** "2 dangers, 1 warning, 0 notes, 3 not checked", and what has been accepted apart from them. */
export function tallyWords(open: readonly Finding[], accepted = 0): string {
  const n = countByLevel(open)
  const many = (count: number, word: string) => `${count} ${word}${count === 1 ? '' : 's'}`
  const words = `${many(n.danger, 'danger')}, ${many(n.warning, 'warning')}, ${many(n.note, 'note')}, ${n['not-checked']} not checked`
  return accepted === 0 ? words : `${words}, ${accepted} accepted`
}
