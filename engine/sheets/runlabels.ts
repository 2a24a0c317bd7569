import type { Answers } from '../calc/answers'
import { kindOf } from '../kinds/all'
import type { Conductor, Design, TerminalRef } from '../model/design'
import { partById } from '../model/lookup'
import type { Piece } from './block'
import { endTag } from './endtag'
import { type RunWords, runWords } from './runwords'
import type { Shown } from './shown'

/**
 * The words on a conductor, as short lines: what it is; what it carries and what protects it. In the single-line view
 * its return stands with it, or on a line of its own where it differs in size, length, sheath or current. Trouble of
 * the return is told beside that of the feed.
 */
export function runLines(
  design: Design,
  { conductor: c, withReturn }: Shown,
  answers: Answers | null,
): Piece[][] {
  const own = runWords(design, c, answers)
  const carries = [own.current, own.protection]
  if (!withReturn) return lines(c.number, whatOf(own, own.colour), carries)
  const back = runWords(design, withReturn, answers)
  const landing = `returns to ${endTag(design, landingOf(design, c, withReturn))}`
  const trouble = back.inTrouble && back.protection !== own.protection ? back.protection : ''
  const metered = isAtLoad(design, c) ? '' : METERED[answers?.runs.get(withReturn.id)?.metered ?? 'unknown']
  const alike =
    own.size === back.size &&
    own.length === back.length &&
    own.laid === back.laid &&
    own.current === back.current
  if (alike) {
    const colours = own.colour === back.colour ? own.colour : `${own.colour}/${back.colour}`
    return lines(`${c.number}/${back.number}`, whatOf(own, colours), [
      ...carries,
      trouble === '' ? '' : `${back.number} ${trouble}`,
      landing,
      metered,
    ])
  }
  return [
    ...lines(c.number, whatOf(own, own.colour), carries),
    ...lines(back.number, whatOf(back, back.colour), [back.current, trouble, landing, metered]),
  ]
}

const whatOf = ({ size, length, laid }: RunWords, colours: string): string =>
  [` · ${size} ${colours}`, length, ...(laid === '' ? [] : [laid])].join(' · ')

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

/** The end at which a return lands, seen from what it returns from. */
function landingOf(design: Design, feed: Conductor, { from, to }: Conductor): TerminalRef {
  const ofFeed = new Set([feed.from.part, feed.to.part])
  const ends = [from, to]
  return ends.find((end) => !ofFeed.has(end.part)) ?? ends.find((end) => isBar(design, end.part)) ?? to
}

const isBar = (design: Design, id: string): boolean =>
  kindOf(partById(design, id)?.kind ?? '')?.group === 'distribution'

/** Several short lines on one, with points between. */
export const onOneLine = (lines: readonly (readonly Piece[])[]): Piece[] =>
  lines.flatMap((line, i) => (i === 0 ? line : [{ text: ' · ' }, ...line]))
