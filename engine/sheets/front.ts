import { line } from '../kinds/draw'
import type { Design } from '../model/design'
import { drawingNotes } from '../model/drawingnotes'
import type { Millimetres } from '../units'
import { LEAST, textMark, USUAL } from './block'
import type { Drawing } from './drawing'
import { type FlowBlock, heading, listBlocks, paragraph } from './flow'
import { wrapTo } from './measure'
import { FLAG, flagMarks } from './noteflags'

/** A line of the sheet index. */
export interface IndexRow {
  /** From 1. */
  readonly number: number
  readonly title: string
  readonly holds: string
}

const NUMBER: Millimetres = 9

/** The sheets with their number, title and what is on each; every line leads to its sheet. */
export function indexBlocks(rows: readonly IndexRow[], width: Millimetres): FlowBlock[] {
  return listBlocks(
    [heading('Sheets', width)],
    rows.map(({ number, title, holds }): FlowBlock => {
      const lines = holds === '' ? [] : wrapTo(width - NUMBER, holds, LEAST)
      const h = 5 + lines.length * 2.7 + 1.4
      return {
        h,
        marks: [
          textMark(0, USUAL * 1.4, { text: `${number}`, height: USUAL, weight: 'bold' }),
          textMark(NUMBER, USUAL * 1.4, { text: title, height: USUAL }),
          ...lines.map((text, i) => textMark(NUMBER, 7 + i * 2.7, { text })),
          line([0, h - 0.4, width, h - 0.4], { pen: 'thin', ink: 'faint' }),
        ],
        links: [{ x: 0, y: 0, w: width, h, sheet: number - 1 }],
      }
    }),
  )
}

/** The drawing notes, each with the flag that stands at parts, and the parts that refer to it. */
export function drawingNoteBlocks(design: Design, width: Millimetres): FlowBlock[] {
  const notes = drawingNotes(design)
  if (notes.length === 0) return []
  const indent = FLAG.w + 2.5
  return listBlocks(
    [heading('Drawing notes', width)],
    notes.map((text, i): FlowBlock => {
      const users = design.parts.filter((p) => p.notes?.includes(i + 1)).map((p) => p.designation)
      const words = paragraph(users.length > 0 ? `${text} (${ranges(users)})` : text, width, {
        indent,
        after: 1.5,
      })
      return { ...words, marks: [...flagMarks(0, 0.2, i + 1), ...words.marks] }
    }),
  )
}

/** What drawings hold together, by designation: "E11–E15, F7, M11–M14". */
export const holdsOf = (drawings: readonly Drawing[], { parts }: Design): string => {
  const here = new Set(drawings.flatMap(({ layout }) => layout.parts.map((p) => p.id)))
  return ranges(parts.filter((p) => here.has(p.id)).map((p) => p.designation))
}

/** Designations in order, runs of three or more as "E11–E15". */
export function ranges(designations: readonly string[]): string {
  const split = designations
    .map((name) => ({
      name,
      letter: name.replace(/\d+$/, ''),
      number: Number(/\d+$/.exec(name)?.[0] ?? Number.NaN),
    }))
    .sort((a, b) => (a.letter < b.letter ? -1 : a.letter > b.letter ? 1 : a.number - b.number))
  const words: string[] = []
  for (let i = 0; i < split.length; ) {
    let k = i
    while (split[k + 1]?.letter === split[i]!.letter && split[k + 1]!.number === split[k]!.number + 1) k++
    if (k - i < 2) k = i
    words.push(k === i ? split[i]!.name : `${split[i]!.name}–${split[k]!.name}`)
    i = k + 1
  }
  return words.join(', ')
}
