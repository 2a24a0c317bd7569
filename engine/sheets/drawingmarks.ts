import { line, outline } from '../kinds/draw'
import type { Mark } from '../model/marks'
import { LEAST, moved, textMark } from './block'
import type { Drawing } from './drawing'
import type { Flag } from './flags'
import { outlineMarks, wordMarks } from './outlinemarks'
import { runMarks } from './runmarks'
import type { SceneLabel } from './scene'

/** A drawing as marks in its own millimetres. `referenceOf` gives the place where a flag's conductor goes on: "2/B4". */
export function drawingMarks(
  { layout, labels, tables }: Drawing,
  referenceOf: (flag: Flag) => string,
): Mark[] {
  return [
    ...layout.outlines.map(outlineMarks),
    ...runMarks(layout.conductors, layout.joins),
    ...layout.parts.flatMap((p) => moved(p.marks, p.x, p.y)),
    ...layout.flags.flatMap((f) => flagMarks(f, `${numberOf(layout.shown, f)} → ${referenceOf(f)} ${f.far}`)),
    ...layout.outlines.flatMap((o) => wordMarks(o.name)),
    ...layout.texts.flatMap(wordMarks),
    ...tables.flatMap((t) => moved(t.marks, t.x, t.y)),
    ...labels.flatMap(labelMarks),
  ]
}

const numberOf = (shown: Drawing['layout']['shown'], flag: Flag): string =>
  shown.find((s) => s.conductor.id === flag.conductor)?.conductor.number ?? ''

/** An outline that points off the sheet, with the number of the conductor, where it goes on and where it ends there. */
function flagMarks({ box, side }: Flag, words: string): Mark[] {
  const [near, far] = side === 'left' ? [box.x + box.w, box.x] : [box.x, box.x + box.w]
  const tip = side === 'left' ? far + 2 : far - 2
  const [top, bottom, middle] = [box.y - 0.6, box.y + box.h + 0.6, box.y + box.h / 2]
  return [
    outline([near, top, tip, top, far, middle, tip, bottom, near, bottom], { pen: 'line', fill: 'paper' }),
    textMark(box.x + box.w / 2, middle + LEAST / 2, { text: words, weight: 'bold' }, { anchor: 'middle' }),
  ]
}

function labelMarks(label: SceneLabel): Mark[] {
  const leader = label.leader ? leaderMarks(label.leader) : []
  const marks = label.marks.map((mark): Mark => {
    if (mark.is !== 'text') return mark
    const [dx, dy] = mark.at
    return label.turn === 0
      ? { ...mark, at: [label.x + dx, label.y + dy] }
      : { ...mark, at: [label.x + dy, label.y - dx], turn: 90 }
  })
  return [...leader, ...marks]
}

/** A thin line with an arrow head at the conductor; beside it, where the line is too short for one, none. */
function leaderMarks([[x1, y1], [x2, y2]]: NonNullable<SceneLabel['leader']>): Mark[] {
  const length = Math.hypot(x2 - x1, y2 - y1)
  if (length < 1) return []
  const [ux, uy] = [(x1 - x2) / length, (y1 - y2) / length]
  const head = Math.min(1.8, length / 2)
  const [bx, by] = [x2 + head * ux, y2 + head * uy]
  const side = head / 4
  return [
    line([x1, y1, x2, y2], { pen: 'thin' }),
    outline([x2, y2, bx - side * uy, by + side * ux, bx + side * uy, by - side * ux], {
      pen: 'thin',
      fill: 'ink',
    }),
  ]
}
