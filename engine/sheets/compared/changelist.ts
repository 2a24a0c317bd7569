import { compareDesigns } from '../../calc/compare/compare'
import { compareResults } from '../../calc/compare/results'
import type { Design } from '../../model/design'
import { withoutRecords } from '../../model/workrecords'
import { type Analysed, analyse } from '../../rules/analyse'
import { CHANGE_GROUPS, CHANGE_MARKS, CHANGE_WORDS, type ChangeRow } from '../../words/changerow'
import { changeRows } from '../../words/changerows'
import { sentence } from '../../words/findings'
import { resultRows } from '../../words/resultrows'
import type { Column, Schedule } from '../schedules/schedule'

/** A state with what the engine has to say about it. */
export interface AnalysedState extends Analysed {
  readonly design: Design
}

/** Checked as it is designed: what is recorded of the work is not compared. */
export const analysedState = (design: Design): AnalysedState => ({
  design,
  ...analyse(withoutRecords(design)),
})

/** What a finding is called by its key, where one of the states has it. */
function titleIn(...states: readonly AnalysedState[]): (key: string) => string {
  const titles = new Map(
    states.flatMap(({ design, findings }) =>
      findings.map((f) => [f.key, sentence(f, design).title] as const),
    ),
  )
  return (key) => titles.get(key) ?? `Finding ${key.split(' ')[0]}`
}

/** Everything that differs between two states and in their results, group by group. */
export function allChangeRows(before: AnalysedState, after: AnalysedState): readonly ChangeRow[] {
  const rows = [
    ...changeRows(
      before.design,
      after.design,
      compareDesigns(before.design, after.design),
      titleIn(before, after),
    ),
    ...resultRows(compareResults(before, after), before.design, after.design),
  ]
  return Object.keys(CHANGE_GROUPS).flatMap((group) => rows.filter((r) => r.group === group))
}

type Key = 'group' | 'mark' | 'what' | 'name' | 'change'

const COLUMNS: readonly Column<Key>[] = [
  { key: 'group', title: 'Group', unit: '', align: 'start', wide: 20, band: true },
  { key: 'mark', title: '', unit: '', align: 'start', wide: 2 },
  { key: 'what', title: 'What', unit: '', align: 'start', wide: 9 },
  { key: 'name', title: 'Item', unit: '', align: 'start', wide: 26 },
  { key: 'change', title: 'Before → after', unit: '', align: 'start', wide: 80 },
]

/** What changed from one state to another, as a table for paper and for files. */
export function changeSchedule(before: AnalysedState, after: AnalysedState, title: string): Schedule<Key> {
  return {
    key: 'changes',
    title,
    columns: COLUMNS,
    rows: allChangeRows(before, after).map(({ key, group, what, name, lines, parts, conductors }) => ({
      key,
      name,
      cells: {
        group: CHANGE_GROUPS[group],
        mark: CHANGE_MARKS[what],
        what: CHANGE_WORDS[what],
        name,
        change: lines.join('. '),
      },
      parts,
      conductors,
    })),
    notes: [
      'Parts and conductors are known by their permanent ids, not by their designations.',
      'What is recorded while building, testing and handing over is not compared.',
    ],
  }
}
