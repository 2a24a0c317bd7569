import type { Answers } from '../calc/answers'
import type { Design } from '../model/design'
import type { Finding } from '../rules/finding'
import { conductorBlocks } from './conductorblocks'
import { findingBlocks } from './findingblocks'
import { columnWidth, type FlowBlock, type FlowPage, flow } from './flow'
import { drawingNoteBlocks, type IndexRow, indexBlocks } from './front'
import { colourBlocks, readingBlocks, symbolBlocks } from './legend'
import type { Area, Paper } from './paper'
import type { Placed, Places } from './places'
import { checkBlocks, designerBlocks, ruleSetBlocks } from './rulesetblocks'

const COLUMNS = { A4: 2, A3: 3, A2: 4 } as const
const PAD = 6

/** Room for words on a sheet, and how wide its columns are. */
interface Desk {
  readonly area: Area
  readonly columns: number
  readonly width: number
}

function deskOn({ size }: Paper, room: Area): Desk {
  const area = { x: room.x + PAD, y: room.y + PAD, w: room.w - 2 * PAD, h: room.h - 2 * PAD }
  return { area, columns: COLUMNS[size], width: columnWidth(area, COLUMNS[size]) }
}

/** Groups of blocks that help to read the drawing: they fill the front sheet as far as it has room. */
const legendOf = (design: Design, width: number): readonly (readonly FlowBlock[])[] => [
  [...readingBlocks(width), ...colourBlocks(design, width)],
  symbolBlocks(design, width),
]

/** How many groups of the legend have room on the front sheet, for so many sheets. */
export function legendInFront(design: Design, rows: readonly IndexRow[], paper: Paper, room: Area): number {
  const { area, columns, width } = deskOn(paper, room)
  const legend = legendOf(design, width)
  const own = [...indexBlocks(rows, width), ...drawingNoteBlocks(design, width)]
  for (let n = legend.length; n > 0; n--)
    if (flow([...own, ...legend.slice(0, n).flat()], area, columns).length === 1) return n
  return 0
}

/** The pages before the drawing: the sheets, the drawing notes, and `legend` groups of how to read it. */
export function frontPages(
  design: Design,
  rows: readonly IndexRow[],
  legend: number,
  paper: Paper,
  room: Area,
): FlowPage[] {
  const { area, columns, width } = deskOn(paper, room)
  const blocks = [
    ...indexBlocks(rows, width),
    ...drawingNoteBlocks(design, width),
    ...legendOf(design, width).slice(0, legend).flat(),
  ]
  return flow(blocks, area, columns)
}

/** The pages behind the drawing: findings, what found no room on it, the legend from group `from` on, rule set, checks. */
export function notePages(
  design: Design,
  answers: Answers | null,
  findings: readonly Finding[],
  drawn: readonly Placed[],
  places: Places,
  from: number,
  paper: Paper,
  room: Area,
): FlowPage[] {
  const { area, columns, width } = deskOn(paper, room)
  const short = drawn
    .flatMap((p) => p.drawing.short)
    .flatMap(({ conductor, withReturn }) => (withReturn ? [conductor, withReturn] : [conductor]))
  const blocks = [
    ...findingBlocks(design, findings, places, width),
    ...designerBlocks(design, width),
    ...conductorBlocks(design, answers, [...new Set(short)], places, width),
    ...legendOf(design, width).slice(from).flat(),
    ...ruleSetBlocks(design, findings, width),
    ...checkBlocks(width),
  ]
  return flow(blocks, area, columns)
}
