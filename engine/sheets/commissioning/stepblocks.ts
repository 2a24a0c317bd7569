import type { GroupRecord, StepRecord } from '../../calc/commissioning/record'
import type { StepCaution } from '../../calc/commissioning/step'
import type { Design } from '../../model/design'
import type { Millimetres } from '../../units'
import { CAUTION_NAMES, STEP_CAUTIONS } from '../../words/commissioning/cautions'
import { GROUP_WORDS } from '../../words/commissioning/groups'
import { INSTRUMENT_WORDS, probeWords, readingWords } from '../../words/commissioning/readings'
import { settingWords } from '../../words/commissioning/setting'
import { STATE_WORDS } from '../../words/commissioning/states'
import { stepWords } from '../../words/commissioning/steps'
import { LEAST, moved, textMark, USUAL } from '../block'
import { type FlowBlock, heading, small, together } from '../flow'
import { warningSign } from '../warningsign'
import type { Columns } from './columns'
import { readingBlock } from './readingblocks'

/** A group of steps: its heading, then each step with its cautions before its readings. `first`: number of its first step. */
export function groupBlocks(
  design: Design,
  { group, steps }: GroupRecord,
  first: number,
  c: Columns,
): FlowBlock[] {
  const { title, about } = GROUP_WORDS[group]
  const settings = steps.map(({ step }) => settingWords(step, design).join(' '))
  const shared = settings.every((s) => s === settings[0]) ? settings[0]! : ''
  const told = new Set<StepCaution>()
  const intro = together([
    heading(title, c.width),
    small([about, shared].filter((s) => s !== '').join(' '), c.width, { after: 1 }),
  ])
  return [
    { ...intro, leads: true, begins: true, title },
    ...steps.flatMap((record, i) => {
      const cautions = cautionBlocks(record.step.cautions, told, c.width - INDENT)
      const setting = shared === '' ? settings[i]! : ''
      return stepBlocks(design, record, { number: first + i, cautions, setting }, c)
    }),
  ]
}

/** Indent of what stands below the number of a step. */
const INDENT: Millimetres = 8

/** Width of the warning sign before a caution, mm. */
const SIGN: Millimetres = 3.4

/** From so many readings on, what they have in common is said once above them. */
const MANY = 3

/** A step of no more readings than this is never broken. */
const WHOLE = 4

interface StepHead {
  readonly number: number
  readonly cautions: readonly FlowBlock[]
  readonly setting: string
}

function stepBlocks(
  design: Design,
  record: StepRecord,
  { number, cautions, setting }: StepHead,
  c: Columns,
): FlowBlock[] {
  const { step, state, readings } = record
  const { title, text } = stepWords(step, design)
  const [only, ...more] = readings
  if (only && more.length === 0 && only.reading.asks === 'so' && setting === '') {
    const row = { title: `${number}  ${title}`, means: '', lines: [text] }
    return [together([{ h: 1.5, marks: [] }, ...cautions, readingBlock(design, step, only, row, c)])]
  }
  const lines = readings.map(({ reading }) => [
    INSTRUMENT_WORDS[reading.instrument],
    ...probeWords(reading, design),
  ])
  const common = readings.length < MANY ? [] : lines[0]!.filter((l) => lines.every((own) => own.includes(l)))
  const told = [setting, text, ...common.map((l) => `${l}.`)]
  const done = readings.some((r) => r.entries.length > 0) ? STATE_WORDS[state] : ''
  const headed = (words: string, warned: readonly FlowBlock[]): FlowBlock =>
    together([
      { h: 2.5, marks: [] },
      {
        h: USUAL * 1.6,
        marks: [
          textMark(0, USUAL * 1.15, { text: `${number}`, height: USUAL, weight: 'bold' }),
          textMark(INDENT, USUAL * 1.15, { text: words, height: USUAL, weight: 'bold' }),
          textMark(c.width, USUAL * 1.15, { text: done, height: LEAST, weight: 'bold' }, { anchor: 'end' }),
        ],
      },
      ...warned,
      indented(small(told.filter((s) => s !== '').join(' '), c.width - INDENT)),
    ])
  const head = headed(title, cautions)
  const again = headed(
    `${title}, continued`,
    cautionBlocks(step.cautions, new Set(step.cautions), c.width - INDENT),
  )
  const rows = readings.map((r, i) => {
    const [means, ...probes] = lines[i]!.map((l) => (common.includes(l) ? '' : l))
    const row = { title: readingWords(r.reading, design), means: means!, lines: probes }
    return readingBlock(design, step, r, row, c)
  })
  const leads = (i: number): boolean =>
    i + 1 < rows.length && (rows.length <= WHOLE || i === 0 || i === rows.length - 2)
  return [{ ...head, leads: true }, ...rows.map((row, i) => ({ ...row, leads: leads(i), again }))]
}

/** In full where the group needs it for the first time, then in a few words. */
function cautionBlocks(
  cautions: readonly StepCaution[],
  told: Set<StepCaution>,
  width: Millimetres,
): FlowBlock[] {
  if (cautions.length === 0) return []
  const fresh = cautions.filter((k) => !told.has(k))
  const known = cautions.filter((k) => told.has(k))
  for (const k of fresh) told.add(k)
  const words = [
    ...fresh.map((k) => STEP_CAUTIONS[k]),
    ...(known.length > 0 ? [`Again: ${known.map((k) => CAUTION_NAMES[k]).join(', ')}.`] : []),
  ].join(' ')
  const text = small(words, width - 5, { weight: 'bold' })
  return [
    {
      h: Math.max(text.h, SIGN + 0.6),
      marks: [...warningSign(INDENT, 0, SIGN), ...indented(text, INDENT + 5).marks],
    },
  ]
}

function indented(block: FlowBlock, by: Millimetres = INDENT): FlowBlock {
  return { ...block, marks: moved(block.marks, by, 0) }
}
