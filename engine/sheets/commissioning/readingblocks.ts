import type { EntryRecord, ReadingRecord } from '../../calc/commissioning/record'
import type { TestStep } from '../../calc/commissioning/step'
import { line, rect } from '../../kinds/draw'
import type { Design } from '../../model/design'
import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import { entryNotes, expectedWords, foundWords, STATE_WORDS, whoWhen } from '../../words/commissioning/states'
import { LEAST, textMark, USUAL } from '../block'
import type { FlowBlock } from '../flow'
import { type Weight, widthOf, wrapTo } from '../measure'
import type { Columns } from './columns'

const PITCH = LEAST * 1.5
/** Room to write with a pen. */
const LEAST_ROW: Millimetres = 8
const PAD: Millimetres = 1

/** What a row says on its left: a title, what it is measured with behind it where there is room, and lines below. */
export interface RowWords {
  readonly title: string
  readonly means: string
  readonly lines: readonly string[]
}

/** One reading: where, what is expected, and what was found, or boxes for it; earlier entries below. */
export function readingBlock(
  design: Design,
  step: TestStep,
  record: ReadingRecord,
  row: RowWords,
  c: Columns,
): FlowBlock {
  const { entries, expected } = record
  const words = expectedWords(record, step, design)
  const last = entries.at(-1)
  const isBlank = last === undefined
  const room = c.expected - 2 * PAD
  const before = widthOf(row.title, LEAST, 'bold') + 2 * PAD
  const isBeside = row.means !== '' && before + widthOf(row.means, LEAST) <= room
  const what = [
    ...styled(row.title, room, 'bold'),
    ...[isBeside ? '' : row.means, ...row.lines].flatMap((text) => styled(text, room)),
  ]
  const bounds = [
    ...styled(words.bounds, c.found - c.expected - 2 * PAD, 'bold'),
    ...styled(words.from, c.found - c.expected - 2 * PAD),
  ]
  const result = last ? styled(STATE_WORDS[record.state], c.who - c.result - 2 * PAD, 'bold') : []
  const found = last ? styled(foundWords(last), c.result - c.found - 2 * PAD, 'bold') : []
  const who = last ? styled(whoWhen(last.entry), c.width - c.who - 2 * PAD) : []
  const tallest = Math.max(what.length, bounds.length, found.length, result.length, who.length)
  const h = Math.max(LEAST_ROW, tallest * PITCH + 2 * PAD)
  const below = belowLines(entries, c.width - 6)
  const judged = expected.is === 'not-known' && isBlank ? judgementLine(c, h) : null
  return {
    h: h + below.length * PITCH + (below.length > 0 ? PAD : 0) + (judged ? LEAST_ROW : 0),
    marks: [
      ...linesAt(what, c.what + PAD),
      ...(isBeside ? linesAt(styled(row.means, room), c.what + PAD + before) : []),
      ...linesAt(bounds, c.expected + PAD),
      ...linesAt(found, c.found + PAD),
      ...linesAt(result, c.result + PAD),
      ...linesAt(who, c.who + PAD),
      ...[c.expected, c.found, c.result, c.who].map((x) => line([x, 0, x, h], { pen: 'thin', ink: 'faint' })),
      rect(0, 0, c.width, h, { pen: 'thin' }),
      ...(isBlank ? unitMark(record, c, h) : []),
      ...below.map((text, i) => textMark(5, h + PAD + (i + 1) * PITCH - 0.6, { text, height: LEAST })),
      ...(judged ?? []),
    ],
  }
}

interface Styled {
  readonly text: string
  readonly weight: Weight
}

const styled = (text: string, width: Millimetres, weight: Weight = 'regular'): Styled[] =>
  text === '' ? [] : wrapTo(width, text, LEAST, weight).map((t) => ({ text: t, weight }))

const linesAt = (lines: readonly Styled[], x: Millimetres): Mark[] =>
  lines.map(({ text, weight }, i) =>
    textMark(x, PAD + (i + 1) * PITCH - 0.6, { text, height: LEAST, weight }),
  )

/** The unit at the foot of an empty box; for what is looked at, the two words to choose from. */
function unitMark({ expected, reading }: ReadingRecord, c: Columns, h: Millimetres): Mark[] {
  const unit = expected.is === 'figure' ? expected.unit : reading.asks === 'so' ? 'yes / no' : ''
  return unit === ''
    ? []
    : [textMark(c.result - PAD, h - PAD, { text: unit, height: USUAL, ink: 'faint' }, { anchor: 'end' })]
}

/** Where nothing is known to expect, a person writes down why it is good or not. */
const judgementLine = (c: Columns, h: Millimetres): Mark[] => [
  textMark(PAD, h + LEAST_ROW - 2.5, { text: 'Good or not, and why, in words:', height: LEAST }),
  line([44, h + LEAST_ROW - 1.8, c.width, h + LEAST_ROW - 1.8], { pen: 'thin' }),
]

/** Remark and standing of the newest entry; whatever was entered before it, so that what failed stays in sight. */
function belowLines(entries: readonly EntryRecord[], width: Millimetres): string[] {
  return [...entries].reverse().flatMap((e, i) => {
    const { remark } = e.entry
    const notes = [...(remark === '' ? [] : [`Remark: ${remark}`]), ...entryNotes(e)]
    const own = i === 0 ? notes : [earlier(e), ...notes]
    return own.length === 0 ? [] : wrapTo(width, own.join(' · '), LEAST)
  })
}

const earlier = (e: EntryRecord): string =>
  `Before: ${foundWords(e)}, ${e.result === 'passed' ? 'pass' : 'fail'} (${whoWhen(e.entry)})`
