import { kindOf } from '../kinds/all'
import { line } from '../kinds/draw'
import type { Design } from '../model/design'
import type { Values } from '../model/fields'
import type { Kind } from '../model/kind'
import type { Mark } from '../model/marks'
import { complete, initialValues, isRows } from '../model/values'
import { COLOURS } from '../tables/colours'
import type { Millimetres } from '../units'
import { LEAST, moved, textMark, USUAL } from './block'
import { type FlowBlock, heading, listBlocks, paragraph, small } from './flow'
import { wrapTo } from './measure'
import { runMarks } from './runmarks'
import type { SceneConductor } from './scene'

const CELL: Millimetres = 60

/** Symbols of the kinds that stand on the sheets, with their names, in a grid: the tall ones last, beside each other. */
export function symbolBlocks(design: Design, width: Millimetres): FlowBlock[] {
  const kinds = [...new Set(design.parts.map((p) => p.kind))].flatMap((key) => kindOf(key) ?? [])
  const perRow = Math.max(1, Math.floor(width / CELL))
  const cells = kinds.map((kind) => cellOf(kind, width / perRow)).sort((a, b) => a.h - b.h)
  const rows: FlowBlock[] = []
  for (let i = 0; i < cells.length; i += perRow) {
    const row = cells.slice(i, i + perRow)
    const h = Math.max(...row.map((c) => c.h))
    rows.push({ h, marks: row.flatMap((c, k) => moved(c.marks, (k * width) / perRow, (h - c.h) / 2)) })
  }
  return listBlocks([heading('Symbols used', width)], rows)
}

/** Symbol in a box of a fixed width with its name and letter to the right of it. */
function cellOf(kind: Kind, width: Millimetres): FlowBlock {
  const { w, h, marks } = kind.symbol(shortValues(kind))
  const left = 30
  const scale = Math.min(1, (left - 4) / w)
  const own = scale < 1 ? marks.filter((m) => m.is !== 'text') : marks
  const name = wrapTo(width - left - 3, kind.title, USUAL)
  const height = Math.max(h * scale, name.length * 3.75 + 3) + 4
  const top = (height - name.length * 3.75 - 3) / 2
  return {
    h: height,
    marks: [
      ...moved(own, (left - 2 - w * scale) / 2, (height - h * scale) / 2, scale),
      ...name.map((text, i) => textMark(left, top + i * 3.75 + USUAL * 1.15, { text, height: USUAL })),
      textMark(left, top + name.length * 3.75 + LEAST * 1.15, {
        text: `designated ${kind.letter}…`,
        ink: 'faint',
      }),
    ],
  }
}

/** Values of a new part with no more than two rows in each of its tables. */
export function shortValues(kind: Kind): Values {
  const values = Object.entries(initialValues(kind.fields)).map(([key, value]) => [
    key,
    isRows(value) ? value.slice(0, 2) : value,
  ])
  return complete(kind.fields, Object.fromEntries(values))
}

/** How the lines and the words on them are read. */
export function readingBlocks(width: Millimetres): FlowBlock[] {
  const [from, to] = [0, 26]
  const sample = (nature: SceneConductor['nature'], withReturn = false): Mark[] =>
    runMarks(
      [
        {
          id: '',
          from: { part: '', terminal: '' },
          to: { part: '', terminal: '' },
          points: [
            [from + 2, 2],
            [to, 2],
          ],
          nature,
          withReturn: withReturn ? 'return' : null,
          routed: true,
        },
      ],
      [],
    )
  const row = (marks: readonly Mark[], text: string): FlowBlock => {
    const words = paragraph(text, width, { indent: to + 5, after: 1.5 })
    return { h: Math.max(words.h, 5), marks: [...marks, ...words.marks] }
  }
  const cross = [line([4, 2, 24, 2], { pen: 'strong' }), line([14, -0.5, 14, 4.5], { pen: 'strong' })]
  const join = runMarks([], [[14, 2]])
  return [
    heading('Reading the drawing', width),
    row(sample('positive'), 'Positive conductor'),
    row(sample('negative'), 'Negative conductor: a double line'),
    row(sample('positive', true), 'Feed and return drawn as one line: the tick stands for two conductors'),
    row(sample('data'), 'Data link'),
    row(sample('mains'), 'Mains: licensed persons only'),
    row(sample('other'), 'Sense lead, or a conductor of no fixed pole'),
    row([...cross, ...join], 'Joined: with a dot. Lines that cross without a dot are not joined'),
    paragraph(
      'On a conductor: number · size and colour · length one way · greatest current that it can ever have to carry (max) · what protects it. “own”: the designer’s own figure. “?”: not known. F2:4 is way 4 of F2. “In a sheath”: to be laid in a sheath, conduit or enclosure throughout.',
      width,
      { after: 1.5 },
    ),
    paragraph(
      '“Limited by” names a source that gives no more than that: no device protects there. “Without limit while W9 is bare”: a return that has a limit again as soon as W9 is protected.',
      width,
      { after: 1.5 },
    ),
    paragraph(
      'Of a pair, “returns to” says where the return lands: W4:12 is stud 12 of the bar W4, T3 PV − the terminal of that name.',
      width,
      { after: 1.5 },
    ),
    paragraph('On a load: designation, name, current, and whether the load-side shunt counts it.', width, {
      after: 1.5,
    }),
    paragraph(
      'A flag at the edge of a drawing gives the sheet and field where the conductor goes on, and the terminal at which it ends there: 2/B4 T5 + is the terminal + of T5, by field B4 of sheet 2. Sheets go by the number in the title block, not by the page of a pack.',
      width,
    ),
  ]
}

/** Colour letters that conductors of this design carry. */
export function colourBlocks(design: Design, width: Millimetres): FlowBlock[] {
  const used = new Set(design.conductors.map((c) => c.colour))
  const letters = Object.entries(COLOURS).filter(([key]) =>
    [...used].some(
      (c) => c === key || (c.length === 4 && c !== 'GNYE' && (c.startsWith(key) || c.endsWith(key))),
    ),
  )
  if (letters.length === 0) return []
  const text = letters.map(([key, name]) => `${key} ${name}`).join(' · ')
  return [heading('Colours (IEC 60757)', width), small(text, width, { height: USUAL })]
}
