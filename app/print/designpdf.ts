import { type Bookmark, type Design, type Sheet, standingWords, writeDesign } from '../../engine'
import type { Colouring } from './inks'
import { type Fonts, pdfOf } from './pdf'

export interface DesignPdfWords {
  /** What the sheets are: "Workshop schedules". */
  readonly title: string
  readonly fonts: Fonts
  readonly colouring: Colouring
  /** Date of issue, ISO 8601. Default: the date of the design. */
  readonly date?: string
  /** Default: one for each sheet. */
  readonly bookmarks?: readonly Bookmark[]
}

/** Sheets made from a design as a PDF with the design file inside. The same sheets and date give the same bytes. */
export function designPdf(
  design: Design,
  sheets: readonly Sheet[],
  { title, fonts, colouring, date = design.settings.date, bookmarks }: DesignPdfWords,
): Uint8Array {
  const { name, designer, vehicle } = design.settings
  const { called, status } = standingWords(design)
  return pdfOf(
    sheets,
    {
      title: name === '' ? title : `${name}: ${title.toLowerCase()}`,
      author: designer,
      subject: [vehicle, called, status].filter((s) => s !== '').join(', '),
      date,
      colouring,
      ...(bookmarks ? { bookmarks } : {}),
      attachment: {
        name: 'design.loomwright.json',
        bytes: new TextEncoder().encode(writeDesign(design)),
        mime: 'application/json',
      },
    },
    fonts,
  )
}
