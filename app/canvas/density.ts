import { type SceneLabel, type TextMark, widthOf } from '../../engine'
import { PX } from './scale'

/**
 * How much of the words the sheet shows at a zoom. Words too small to read are left out: the captions first, then
 * names; a designation or number is lettered larger instead, inside the room that the layout kept for all its words,
 * so that nothing can run into anything.
 */

/** Capitals lower than this, CSS px, are hard to read. */
export const READABLE_PX = 7
/** Names smaller than this as they stand, CSS px, are left out: of all parts alike. */
const NAME_PX = 6
/** A designation may shrink to this, CSS px, before it is left out. */
const LEAST_PX = 5
/** Zoom counts in steps of this ratio, so that words change now and then and not with every turn of the wheel. */
const STEP = 2 ** (1 / 4)
/** How far beyond a step, as a part of it, the zoom must go before the step changes: at its edge nothing flickers. */
const SLACK = 0.03

/** The zoom to letter for: the lower end of the step that `zoom` lies in, or `before` while it is still near that. */
export function letteringZoom(zoom: number, before: number | null): number {
  if (before !== null && zoom >= before * (1 - SLACK) && zoom < before * STEP * (1 + SLACK)) return before
  return STEP ** Math.floor(Math.log(zoom) / Math.log(STEP) + 1e-9)
}

/** Height of capitals, mm on the sheet, that can just be read at a zoom. */
export const readableMm = (zoom: number): number => READABLE_PX / (PX * zoom)

/** Can words of this height, mm, be read? A hair below counts, as heights are round figures and steps are not. */
export const isReadable = (heightMm: number, zoom: number): boolean =>
  heightMm * PX * zoom >= READABLE_PX * 0.97

/** Is a word in a symbol more than a smudge? A letter there is half known by its symbol, so it may be smaller. */
export const isLegible = (heightMm: number, zoom: number): boolean => heightMm * PX * zoom >= LEAST_PX * 0.8

/** What a label gives to its lettering. `hugs`: the edge, in its upright frame, that faces what it belongs to. */
export interface Lettered extends Pick<SceneLabel, 'of' | 'marks' | 'w' | 'h'> {
  readonly hugs: 'top' | 'bottom'
  /** Where along the label its leader meets it, 0 to 1; null: no leader. */
  readonly leaderAt: number | null
  /** A conductor's words that stand with a part instead of along the line: never cut short to a bare number. */
  readonly apart?: boolean
}

/** The text of a label to show at a zoom. `room`: what a designation may take at most, even beyond its label, mm. */
export function wordsAt(label: Lettered, zoom: number, room = OWN_ROOM): readonly TextMark[] {
  const texts = label.marks.filter((m) => m.is === 'text')
  const [head] = texts
  if (!head || texts.every((t) => isReadable(t.height, zoom))) return texts
  const wanted = Math.max(readableMm(zoom), head.height)
  return 'part' in label.of
    ? ofPart(label, head, texts, wanted, zoom, room)
    : ofRun(label, head, wanted, zoom)
}

/** A conductor keeps its number, until the numbers would crowd the drawing. */
function ofRun(label: Lettered, head: TextMark, wanted: number, zoom: number): readonly TextMark[] {
  if (label.apart || wanted > LARGEST_NUMBER) return []
  const fits = Math.min(wanted, roomFor([head], label.w, label.h))
  return fits < LEAST_PX / (PX * zoom) ? [] : lettered([head], fits, label)
}

/** A part keeps its name while names can be read as they stand, and its designation at any zoom with room for it. */
function ofPart(
  label: Lettered,
  head: TextMark,
  texts: readonly TextMark[],
  wanted: number,
  zoom: number,
  room: typeof OWN_ROOM,
): readonly TextMark[] {
  const line = texts.filter((t) => t.at[1] === head.at[1])
  if (head.height * PX * zoom >= NAME_PX)
    return lettered(line, Math.max(head.height, Math.min(wanted, roomFor(line, label.w, label.h))), label)
  const fits = roomFor([head], Math.max(label.w, room.w), Math.max(label.h, room.h))
  return fits < LEAST_PX / (PX * zoom) ? [] : lettered([head], Math.min(wanted, fits), label)
}

/** Numbers of conductors are not lettered larger than this, mm. */
const LARGEST_NUMBER = 3.6
/** A designation without more words may take this room, mm: a little more than was kept for it. */
export const OWN_ROOM = { w: 10, h: 6.5 }
/** Room above and below the capitals of one line, with the capitals, as a part of their height. */
const LEADING = 1.15

/** The height of capitals at which texts on one line fill a room, mm. */
const roomFor = (texts: readonly TextMark[], w: number, h: number): number =>
  Math.min(h / LEADING, w / widthAt(texts, 1))

const widthAt = (texts: readonly TextMark[], height: number): number =>
  texts.reduce((sum, t) => sum + widthOf(t.text, height, t.weight), 0)

/** Texts set as one line of a height: at the leader, or against the side that they stood against. */
function lettered(
  texts: readonly TextMark[],
  height: number,
  { w, h, hugs, leaderAt }: Lettered,
): readonly TextMark[] {
  const spare = w - widthAt(texts, height)
  const before = w - texts.reduce((sum, t) => sum + widthOf(t.text, t.height, t.weight), 0)
  const lean = leaderAt ?? (before > 0.01 ? texts[0]!.at[0] / before : 0)
  let x = Math.min(1, Math.max(0, lean)) * spare
  const gap = height * Math.max(0.12, Math.min(0.35, h / height - 1))
  const y = hugs === 'top' ? height + gap : h - gap
  return texts.map((t) => {
    const set: TextMark = { ...t, at: [x, y], height }
    x += widthOf(t.text, height, t.weight)
    return set
  })
}
