import { labelSheets } from '../labelsheets/labelsheets'
import type { PackSection } from './section'

export const labelSection: PackSection = {
  key: 'labels',
  title: 'Labels',
  readers: ['workshop'],
  sheets: ({ design, labels }) => labelSheets(design, labels),
}
