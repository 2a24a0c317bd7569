import { line, outline, rect } from '../kinds/draw'
import type { Design } from '../model/design'
import type { Mark } from '../model/marks'
import { type AcceptedFinding, sortAccepted } from '../rules/accepted'
import type { Finding, Level } from '../rules/finding'
import type { Millimetres } from '../units'
import { acceptedWords, LEVEL_WORDS, sentence } from '../words/findings'
import { LEAST, textMark, USUAL } from './block'
import { type FlowBlock, heading, paragraph, together } from './flow'
import { wrapTo } from './measure'
import type { Places } from './places'

const LEVELS: readonly Level[] = ['danger', 'warning', 'not-checked', 'note']

/**
 * The list of findings, worst first; a clean design says so. What has been accepted comes last, in full and with the
 * reason: nothing is hidden. Without places, none are given.
 */
export function findingBlocks(
  design: Design,
  findings: readonly Finding[],
  places: Places | null,
  width: Millimetres,
): FlowBlock[] {
  const { open, accepted } = sortAccepted(design, findings)
  const counts = LEVELS.map((level) => counted(open.filter((f) => f.level === level).length, level))
  const sorted = LEVELS.flatMap((level) => open.filter((f) => f.level === level))
  return [
    heading('Findings', width),
    paragraph(
      findings.length === 0
        ? 'The checks listed here found nothing to report. What they cannot see, they do not report.'
        : `${counts.join(', ')}${accepted.length > 0 ? `; besides, ${accepted.length} accepted with a reason` : ''}.${places ? ' Places are given as sheet/field.' : ''}`,
      width,
      { after: 2.5 },
    ),
    ...sorted.map((f) => findingBlock(design, f, placesOf(f, places), width)),
    ...acceptedBlocks(design, accepted, places, width),
  ]
}

function acceptedBlocks(
  design: Design,
  accepted: readonly AcceptedFinding[],
  places: Places | null,
  width: Millimetres,
): FlowBlock[] {
  if (accepted.length === 0) return []
  const sorted = LEVELS.flatMap((level) => accepted.filter((a) => a.finding.level === level))
  return [
    heading('Accepted with a reason', width),
    ...sorted.map((a) =>
      findingBlock(design, a.finding, placesOf(a.finding, places), width, acceptedWords(a.accepted)),
    ),
  ]
}

const COUNTED: Readonly<Record<Level, readonly [one: string, more: string]>> = {
  danger: ['danger', 'dangers'],
  warning: ['warning', 'warnings'],
  'not-checked': ['not checked', 'not checked'],
  note: ['to note', 'to note'],
}

const counted = (count: number, level: Level): string => `${count} ${COUNTED[level][count === 1 ? 0 : 1]}`

const INDENT = 24

function findingBlock(
  design: Design,
  f: Finding,
  at: string,
  width: Millimetres,
  accepted?: string,
): FlowBlock {
  const { title, text, todo } = sentence(f, design)
  const where = wrapTo(INDENT - 3, at, LEAST)
  const words = together([
    paragraph(`${title} (${f.rule})`, width, { weight: 'bold', indent: INDENT, after: 0.3 }),
    paragraph(text, width, { indent: INDENT, after: 0.3 }),
    paragraph(todo, width, { indent: INDENT, lead: '', after: accepted ? 0.3 : 0 }),
    ...(accepted ? [paragraph(accepted, width, { weight: 'bold', indent: INDENT, after: 0 })] : []),
  ])
  const h = Math.max(words.h, 5 + where.length * 2.7) + 2.6
  return {
    h,
    marks: [
      ...levelMarks(f.level),
      ...where.map((line, i) => textMark(0, 7.6 + i * 2.7, { text: line })),
      ...words.marks,
      line([0, h - 1.4, width, h - 1.4], { pen: 'thin', ink: 'faint' }),
    ],
  }
}

/** The level as a word with a shape of its own, so that it needs no colour. */
function levelMarks(level: Level): Mark[] {
  const word = textMark(5, USUAL * 1.15, { text: LEVEL_WORDS[level], height: LEAST, weight: 'bold' })
  const [x, y, w] = [0.3, 0.3, 3.2]
  const triangle = [x + w / 2, y, x + w, y + 2.9, x, y + 2.9]
  switch (level) {
    case 'danger':
      return [outline(triangle, { pen: 'line', fill: 'ink' }), word]
    case 'warning':
      return [outline(triangle, { pen: 'line' }), word]
    case 'not-checked':
      return [
        rect(x, y, 2.9, 2.9),
        textMark(x + 1.45, y + 2.4, { text: '?', weight: 'bold' }, { anchor: 'middle' }),
        word,
      ]
    case 'note':
      return [rect(x, y, 2.9, 2.9), word]
  }
}

function placesOf({ parts, conductors }: Finding, places: Places | null): string {
  if (!places) return ''
  const all = [...new Set([...parts, ...conductors].flatMap((id) => places.get(id) ?? []))]
  const more = all.length > 3 ? ` +${all.length - 3}` : ''
  return all.slice(0, 3).join(' ') + more
}
