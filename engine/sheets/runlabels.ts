import type { Answers } from '../calc/answers'
import { kindOf } from '../kinds/all'
import type { Conductor, Design } from '../model/design'
import { partById } from '../model/lookup'
import type { Piece } from './block'
import { runWords } from './runwords'
import type { Shown } from './shown'

/**
 * The words on a conductor, as short lines: what it is; what it carries and what protects it. In the single-line view
 * its return stands with it, or on a line of its own where it differs in size, length or current.
 */
export function runLines(
  design: Design,
  { conductor: c, withReturn }: Shown,
  answers: Answers | null,
): Piece[][] {
  const own = runWords(design, c, answers)
  const carries = [own.current, own.protection]
  if (!withReturn) return lines(c.number, ` · ${own.size} ${own.colour} · ${own.length}`, carries)
  const back = runWords(design, withReturn, answers)
  const bar = `return bar ${barOf(design, c, withReturn)}`
  const metered = isAtLoad(design, c) ? '' : METERED[answers?.runs.get(withReturn.id)?.metered ?? 'unknown']
  const alike = own.size === back.size && own.length === back.length && own.current === back.current
  if (alike) {
    const colours = own.colour === back.colour ? own.colour : `${own.colour}/${back.colour}`
    return lines(`${c.number}/${back.number}`, ` · ${own.size} ${colours} · ${own.length}`, [
      ...carries,
      bar,
      metered,
    ])
  }
  return [
    ...lines(c.number, ` · ${own.size} ${own.colour} · ${own.length}`, carries),
    ...lines(back.number, ` · ${back.size} ${back.colour} · ${back.length}`, [back.current, bar, metered]),
  ]
}

function lines(number: string, what: string, carries: readonly string[]): Piece[][] {
  const said = carries.filter((s) => s !== '').join(' · ')
  const bold: Piece = { text: number, weight: 'bold' }
  return [[bold, { text: what }], ...(said === '' ? [] : [[{ text: said }]])]
}

/** A load says itself whether it is measured. */
const isAtLoad = (design: Design, { from, to }: Conductor): boolean =>
  [from, to].some(({ part }) => kindOf(partById(design, part)?.kind ?? '')?.group === 'loads')

const METERED = {
  measured: 'measured',
  bypasses: 'NOT MEASURED',
  shared: 'PARTLY MEASURED',
  'source-side': 'source side',
  'no-load-shunt': '',
  unknown: '',
} as const

/** Designation of the part at which a return ends, seen from what it returns from. */
function barOf(design: Design, feed: Conductor, c: Conductor): string {
  const ofFeed = new Set([feed.from.part, feed.to.part])
  const ends = [c.from.part, c.to.part]
  const far = ends.find((id) => !ofFeed.has(id)) ?? ends.find((id) => isBar(design, id)) ?? c.to.part
  return partById(design, far)?.designation ?? far
}

const isBar = (design: Design, id: string): boolean =>
  kindOf(partById(design, id)?.kind ?? '')?.group === 'distribution'

/** Several short lines on one, with points between. */
export const onOneLine = (lines: readonly (readonly Piece[])[]): Piece[] =>
  lines.flatMap((line, i) => (i === 0 ? line : [{ text: ' · ' }, ...line]))
