import { bandPlotSheets } from '../plotsheets'
import { schematicSheets } from '../schematic'
import { symbolSheets } from '../symbolsheets'
import { findingSheets } from './findingsheets'
import type { PackSection } from './section'
import { tableForm } from './tableform'

/** The schematic with its findings, and what stands beside it. */
export const drawnSections: readonly PackSection[] = [
  {
    key: 'schematic',
    title: 'Schematic',
    readers: ['designer', 'workshop', 'customer'],
    sheets: ({ design, answers, findings, paper, view }) =>
      schematicSheets(design, answers, findings, { paper, view }),
  },
  {
    key: 'findings',
    title: 'Findings and rule set alone',
    readers: [],
    sheets: findingSheets,
  },
  {
    key: 'symbols',
    title: 'Symbols of all kinds of part',
    readers: [],
    sheets: ({ design }) => symbolSheets({ date: design.settings.date }),
  },
]

/** To be looked up, not to build from: behind everything that is. */
export const plotSection: PackSection = {
  key: 'time-current-plots',
  title: 'Time-current plots',
  readers: ['designer', 'workshop'],
  sheets: ({ design, answers, paper }) => bandPlotSheets(design, answers, { form: tableForm(paper) }),
}
