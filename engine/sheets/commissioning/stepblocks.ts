import type { GroupRecord, StepRecord } from '../../calc/commissioning/record'
import type { StepCaution } from '../../calc/commissioning/step'
import type { Design } from '../../model/design'
import type { Millimetres } from '../../units'
import { CAUTION_NAMES, STEP_CAUTIONS } from '../../words/commissioning/cautions'
import { GROUP_WORDS } from '../../words/commissioning/groups'
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
  const told = new Set<StepCaution>()
  return [
    together([heading(title, c.width), small(about, c.width, { after: 1 })]),
    ...steps.flatMap((step, i) => stepBlocks(design, step, first + i, told, c)),
  ].map((block, i) => (i === 0 ? { ...block, leads: true, begins: true, title } : block))
}

/** Indent of what stands below the number of a step. */
const INDENT: Millimetres = 8

function stepBlocks(
  design: Design,
  { step, state, readings }: StepRecord,
  number: number,
  told: Set<StepCaution>,
  c: Columns,
): FlowBlock[] {
  const { title, text } = stepWords(step, design)
  const setting = settingWords(step, design).join(' ')
  const width = c.width - INDENT
  const done = readings.some((r) => r.entries.length > 0) ? STATE_WORDS[state] : ''
  const head = together([
    { h: 2.5, marks: [] },
    {
      h: USUAL * 1.6,
      marks: [
        textMark(0, USUAL * 1.15, { text: `${number}`, height: USUAL, weight: 'bold' }),
        textMark(INDENT, USUAL * 1.15, { text: title, height: USUAL, weight: 'bold' }),
        textMark(c.width, USUAL * 1.15, { text: done, height: LEAST, weight: 'bold' }, { anchor: 'end' }),
      ],
    },
    ...cautionBlocks(step.cautions, told, width),
    indented(small([setting, text].filter((s) => s !== '').join(' '), width)),
  ])
  return [{ ...head, leads: true }, ...readings.map((r) => readingBlock(design, step, r, c))]
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
      h: text.h,
      marks: [...warningSign(INDENT, 0, 3.4), ...indented(text, INDENT + 5).marks],
    },
  ]
}

function indented(block: FlowBlock, by: Millimetres = INDENT): FlowBlock {
  return { ...block, marks: moved(block.marks, by, 0) }
}
