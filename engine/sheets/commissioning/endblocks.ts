import type { CommissioningRecord, Counts } from '../../calc/commissioning/record'
import { line } from '../../kinds/draw'
import type { Design } from '../../model/design'
import type { Millimetres } from '../../units'
import { builtOtherwiseWords } from '../../words/commissioning/asbuilt'
import { INSTRUMENT_WORDS } from '../../words/commissioning/readings'
import { monitorWords } from '../../words/commissioning/setting'
import {
  countsWords,
  foundWords,
  signedWords,
  signingWords,
  total,
  whoWhen,
} from '../../words/commissioning/states'
import { LEAST, textMark } from '../block'
import { type FlowBlock, heading, listBlocks, small } from '../flow'

/** What the record is, how it is filled in, and with what it was measured. */
export function openingBlocks(design: Design, record: CommissioningRecord, width: Millimetres): FlowBlock[] {
  const steps = record.groups.flatMap((g) => g.steps.map((s) => s.step))
  const used = new Set(steps.flatMap((s) => s.readings.map((r) => r.instrument)))
  const meters = (['voltmeter', 'ohmmeter', 'clamp', 'adjustable-supply'] as const).filter((i) => used.has(i))
  const otherwise = builtOtherwiseWords(design)
  return [
    heading('How to use this record', width),
    ...[...HOW, monitorWords(steps, design)].flatMap((text) => (text === '' ? [] : small(text, width))),
    ...(otherwise === '' ? [] : [small(otherwise, width, { weight: 'bold', after: 2 })]),
    ...(taken(record.counts) === 0
      ? []
      : [small(`As it stands: ${countsWords(record.counts)}.`, width, { weight: 'bold', after: 2 })]),
    ...meters.map((i) => writtenLine(`${INSTRUMENT_WORDS[i]}: number and date of its last check`, width)),
  ]
}

const taken = (counts: Counts): number => total(counts) - counts.notDone

const HOW: readonly string[] = [
  'Go through the steps in their order; read the cautions before each. Stop where something fails: mend it, then take the reading again and write it beside the first one.',
  'Expected figures come from the load flow of the state that the step describes, from ratings, and from settings. Tolerances are common practice, no source: meters, rating plates and the state of charge of a battery are not exact.',
  'Discharge of the battery and the return current of loads count as plus. A display that shows discharge below 0 is written down with the other sign.',
  'Where nothing is known to expect, somebody who can judge it writes down why it is good, or not. A step that is not done is not passed.',
]

/** Entries of tests that the design does not ask for any more. */
export function goneBlocks({ gone }: CommissioningRecord, width: Millimetres): FlowBlock[] {
  if (gone.length === 0) return []
  return listBlocks(
    [
      heading('Readings of tests no longer asked for', width),
      small('The design was changed since; they stay in the record.', width, { after: 1.5 }),
    ],
    gone.map((e) => {
      const { of, remark } = e.entry
      const words = [
        of,
        foundWords(e),
        e.result === 'passed' ? 'pass' : 'fail',
        whoWhen(e.entry),
        remark,
        signedWords(e),
      ]
      return small(words.filter((w) => w !== '').join(' · '), width)
    }),
  )
}

/** Signatures that were given, and room for two by hand. */
export function signatureBlocks(record: CommissioningRecord, width: Millimetres): FlowBlock[] {
  return listBlocks(
    [
      heading('Signatures', width),
      small(
        'Whoever signs has taken or witnessed the readings, and judges the installation by the codes that apply to it. What is entered later stands as after the signature.',
        width,
        { after: 2 },
      ),
    ],
    [
      ...record.signings.map((s) => small(signingWords(s), width, { weight: 'bold', after: 1.5 })),
      ...[0, 1].map(() => signHere(width)),
    ],
  )
}

function signHere(width: Millimetres): FlowBlock {
  const third = width / 3
  return {
    h: 15,
    marks: ['Name', 'Date', 'Signature'].flatMap((text, i) => [
      line([i * third, 10, (i + 1) * third - 5, 10], { pen: 'thin' }),
      textMark(i * third, 13, { text, height: LEAST, ink: 'faint' }),
    ]),
  }
}

const writtenLine = (text: string, width: Millimetres): FlowBlock => ({
  h: 8,
  marks: [textMark(0, 6, { text, height: LEAST }), line([width * 0.58, 6.4, width, 6.4], { pen: 'thin' })],
})
