import type { Answers } from '../calc/answers'
import type { Design } from '../model/design'
import type { Mark } from '../model/marks'
import type { Finding } from '../rules/finding'
import { conductorBlocks } from './conductorblocks'
import { findingBlocks } from './findingblocks'
import { columnWidth, flow } from './flow'
import { colourBlocks, readingBlocks, symbolBlocks } from './legend'
import type { Area, Paper } from './paper'
import type { Placed, Places } from './places'
import { checkBlocks, designerBlocks, ruleSetBlocks } from './rulesetblocks'

const COLUMNS = { A4: 2, A3: 3, A2: 4 } as const
const PAD = 6

/** The pages behind the drawing: findings, what found no room on it, how to read it, legend, rule set, checks. */
export function notePages(
  design: Design,
  answers: Answers | null,
  findings: readonly Finding[],
  drawn: readonly Placed[],
  places: Places,
  paper: Paper,
  room: Area,
): Mark[][] {
  const area = { x: room.x + PAD, y: room.y + PAD, w: room.w - 2 * PAD, h: room.h - 2 * PAD }
  const columns = COLUMNS[paper.size]
  const width = columnWidth(area, columns)
  const short = drawn
    .flatMap((p) => p.drawing.short)
    .flatMap(({ conductor, withReturn }) => (withReturn ? [conductor, withReturn] : [conductor]))
  const blocks = [
    ...findingBlocks(design, findings, places, width),
    ...designerBlocks(design, width),
    ...conductorBlocks(design, answers, [...new Set(short)], places, width),
    ...readingBlocks(width),
    ...symbolBlocks(design, width),
    ...colourBlocks(design, width),
    ...ruleSetBlocks(design, findings, width),
    ...checkBlocks(width),
  ]
  return flow(blocks, area, columns)
}
