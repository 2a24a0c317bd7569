import { rect } from '../kinds/draw'
import type { Design } from '../model/design'
import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import { standingWords } from '../words/standing'
import { LARGE, LEAST, textMark, USUAL } from './block'
import { cutTo, type Weight, widthOf, wrapTo } from './measure'

export interface SheetWords {
  /** "Single-line wiring diagram". */
  readonly documentType: string
  /** What this sheet shows of the design. */
  readonly subtitle: string
  /** From 1. */
  readonly number: number
  readonly of: number
  readonly date: string
}

export const TITLE_BLOCK = { w: 180, h: 42 } as const

interface Cell {
  readonly x: Millimetres
  readonly y: Millimetres
  readonly w: Millimetres
  readonly h: Millimetres
  readonly label: string
  readonly value: string
  readonly height?: Millimetres
  readonly weight?: Weight
  readonly second?: string
}

/** Data fields after ISO 7200, relative to the top left corner of the block. A field that is not filled stays empty, to be written in. */
export function titleBlockMarks(design: Design, words: SheetWords): Mark[] {
  const { id, settings: s } = design
  const standing = standingWords(design, words.date)
  const weight = standing.issued ? 'regular' : 'bold'
  const sheet = `${words.number} of ${words.of}`
  const cells: Cell[] = [
    { x: 0, y: 0, w: 60, h: 10, label: 'Customer', value: s.customer },
    { x: 60, y: 0, w: 60, h: 10, label: 'Vehicle', value: s.vehicle },
    { x: 120, y: 0, w: 60, h: 10, label: 'Document type', value: words.documentType },
    {
      ...{ x: 0, y: 10, w: 120, h: 14, label: 'Title', value: s.name, height: LARGE, weight: 'bold' },
      second: words.subtitle,
    },
    {
      x: 120,
      y: 10,
      w: 60,
      h: 7,
      label: 'System',
      value: `${s.systemV} V DC at ${s.ambientC} °C`,
    },
    { x: 120, y: 17, w: 60, h: 7, label: 'Identification', value: id, height: LEAST },
    { x: 0, y: 24, w: 60, h: 9, label: 'Drawn by', value: s.designer },
    { x: 60, y: 24, w: 60, h: 9, label: 'Approved by', value: '' },
    { x: 120, y: 24, w: 60, h: 9, label: 'Status', value: standing.status, weight },
    { x: 0, y: 33, w: 60, h: 9, label: 'Date of issue', value: standing.date },
    { x: 60, y: 33, w: 30, h: 9, label: 'Revision', value: standing.revision, weight: 'bold' },
    { x: 90, y: 33, w: 30, h: 9, label: 'Language', value: 'en' },
    { x: 120, y: 33, w: 60, h: 9, label: 'Sheet', value: sheet, height: LARGE, weight: 'bold' },
  ]
  return [...cells.flatMap(cellMarks), rect(0, 0, TITLE_BLOCK.w, TITLE_BLOCK.h, { pen: 'strong' })]
}

/** Name of the field small in the corner; below it what it holds. In a low field both stand on one line. */
function cellMarks({ x, y, w, h, label, value, height = USUAL, weight = 'regular', second }: Cell): Mark[] {
  const low = h < 8
  const left = low ? x + 18 : x + 1.5
  const room = x + w - 1.5 - left
  const baseline = low ? y + h / 2 + height / 2 : second === undefined ? y + h - 1.8 : y + 7.6
  const fits = widthOf(value, height, weight) <= room
  const lines = fits || low || second !== undefined ? [] : wrapTo(room, value, LEAST)
  return [
    rect(x, y, w, h, { pen: 'thin' }),
    textMark(x + 1.5, low ? y + h / 2 + LEAST / 2 : y + 2.9, { text: label, ink: 'faint' }),
    ...(lines.length === 0
      ? [textMark(left, baseline, { text: cutTo(room, value, height, weight), height, weight })]
      : twoLines(lines, room).map((text, i) => textMark(left, y + h - 3.9 + i * 2.6, { text, weight }))),
    ...(second === undefined
      ? []
      : [textMark(left, y + h - 1.8, { text: cutTo(w - 3, second, USUAL), height: USUAL })]),
  ]
}

/** Two lines at most; what is beyond them is cut. */
const twoLines = ([first = '', ...rest]: readonly string[], room: Millimetres): string[] =>
  rest.length === 0 ? [first] : [first, cutTo(room, rest.join(' '), LEAST)]
