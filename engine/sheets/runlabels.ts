import type { Answers } from '../calc/answers'
import { kindOf } from '../kinds/all'
import type { Conductor, Design } from '../model/design'
import { partById } from '../model/lookup'
import type { Piece } from './block'
import { runWords } from './runwords'
import type { Shown } from './shown'

/** The words on a conductor, as short lines: what it is; what it carries; in the single-line view its return. */
export function runLines(design: Design, shown: Shown, answers: Answers | null): Piece[][] {
  const { conductor: c, withReturn } = shown
  const own = runWords(design, c, answers)
  const what = ` · ${own.size} ${own.colour} · ${own.length}`
  const carries = [own.current, own.protection].filter((s) => s !== '').join(' · ')
  return [
    [{ text: c.number, weight: 'bold' }, { text: what }],
    ...(carries === '' ? [] : [[{ text: carries }]]),
    ...(withReturn ? [returnLine(design, c, withReturn, answers)] : []),
  ]
}

/** "W13 BK to W2 measured"; size, length and current only where they differ from those of the feed. */
function returnLine(design: Design, feed: Conductor, c: Conductor, answers: Answers | null): Piece[] {
  const [own, other] = [runWords(design, c, answers), runWords(design, feed, answers)]
  const differs = (key: 'size' | 'length' | 'current') => (own[key] === other[key] ? [] : [own[key]])
  const said = [...differs('size'), own.colour, ...differs('length'), ...differs('current')]
  const metered = METERED[answers?.runs.get(c.id)?.metered ?? 'unknown']
  return [
    { text: 'return ' },
    { text: c.number, weight: 'bold' },
    { text: ` ${said.join(' ')} to ${barOf(design, feed, c)}${metered === '' ? '' : ` · ${metered}`}` },
  ]
}

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
