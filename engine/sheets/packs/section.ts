import type { Answers } from '../../calc/answers'
import type { Design } from '../../model/design'
import type { Finding } from '../../rules/finding'
import type { LabelSheetOptions } from '../labelsheets/labelsheets'
import type { PaperSize } from '../paper'
import type { Schedule } from '../schedules/schedule'
import type { Sheet } from '../sheet'

/** Whom a pack is for, and what it is called. */
export const PACK_READERS = {
  designer: 'Designer’s pack',
  workshop: 'Workshop pack',
  customer: 'Customer’s pack',
} as const
export type PackReader = keyof typeof PACK_READERS

/** What the sheets of a pack are made from: a design with its answers and findings, and how it is to be drawn. */
export interface PackContext {
  readonly design: Design
  readonly answers: Answers
  readonly findings: readonly Finding[]
  /** Of the schematic; documents of words and tables may take a smaller sheet. */
  readonly paper: PaperSize
  readonly view: 'single-line' | 'both-poles'
  /** Stock that labels are printed on. Default: as usual. */
  readonly labels?: LabelSheetOptions
}

/**
 * A document of a pack. `sheets` is pure; none: the design has nothing to say there, and the pack leaves the section
 * out. Links inside count within the section; the assembler shifts them. It also writes the page number of the whole
 * pack at the lower right, above the edge: the lowest 10 mm of a page without a frame stay free.
 */
export interface PackSection {
  /** Permanent: "fuse-chart". */
  readonly key: string
  /** Bookmark, and line in the contents. */
  readonly title: string
  /** Readers whose pack holds it unless somebody takes it out; it can be put into every pack. */
  readonly readers: readonly PackReader[]
  /** Stands before the contents page: a cover. */
  readonly cover?: true
  readonly sheets: (context: PackContext) => readonly Sheet[]
  /** A table alone: it shares a sheet with the tables beside it where there is room. */
  readonly schedule?: (context: PackContext) => Schedule
}
