import type { Answers } from '../calc/answers'
import { kindOf } from '../kinds/all'
import type { Design, Part } from '../model/design'
import { complete } from '../model/values'
import type { Millimetres } from '../units'
import { LEAST, type Piece, USUAL } from './block'
import { drawWords, loadDeviceOf, meteredOf } from './loadline'
import { widthOf, wrapTo } from './measure'

/** Width that a label keeps to, unless one word is longer. */
const WIDE: Millimetres = 34

/** The words beside a part: designation and name, then its ratings and what its role asks for. */
export function partLines(design: Design, part: Part, answers: Answers | null): Piece[][] {
  const said = packed([...ratingsOf(part), ...roleOf(design, part, answers)])
  return [...heading(part), ...said.map((text): Piece[] => [{ text }])]
}

/** A load: its current and whether it is measured. */
function roleOf(design: Design, part: Part, answers: Answers | null): readonly string[] {
  const group = kindOf(part.kind)?.group
  const load = group === 'loads' ? loadDeviceOf(design, part) : undefined
  return load
    ? [...worstBeyond(ratingsOf(part), drawWords(load)), meteredOf(design, part, load, answers)]
    : []
}

/** The largest running current, where the rating does not say the same already. */
const worstBeyond = (ratings: readonly string[], worst: string): string[] =>
  ratings.includes(worst) ? [] : [`max ${worst}`]

/** "F3" large and bold with the name after it, on as many lines as it takes. */
function heading({ designation, name }: Part): Piece[][] {
  const bold: Piece = { text: designation, height: USUAL, weight: 'bold' }
  if (name === '') return [[bold]]
  const room = WIDE - widthOf(`${designation} `, USUAL, 'bold')
  if (widthOf(name, USUAL) <= room) return [[bold, { text: ` ${name}`, height: USUAL }]]
  return [[bold], ...wrapTo(WIDE, name, LEAST).map((text): Piece[] => [{ text }])]
}

function ratingsOf(part: Part): readonly string[] {
  const kind = kindOf(part.kind)
  return kind ? kind.caption(complete(kind.fields, part.values)) : ['unknown kind']
}

/** Short statements set side by side where they fit, with a point between. */
export function packed(statements: readonly string[], width = WIDE): string[] {
  const lines: string[] = []
  for (const s of statements) {
    const joined = lines.length > 0 ? `${lines.at(-1)} · ${s}` : s
    if (lines.length > 0 && widthOf(joined, LEAST) <= width) lines[lines.length - 1] = joined
    else lines.push(...wrapTo(width, s, LEAST))
  }
  return lines
}
