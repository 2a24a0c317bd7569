import { jsPDF, type OutlineItem } from 'jspdf'
import type { Bookmark, Sheet } from '../../engine'
import { attach, binary } from './attach'
import type { Colouring } from './inks'
import { FAMILY, paint } from './paint'

/** The two weights of the typeface as TrueType files. Only the signs that are used go into the document. */
export interface Fonts {
  readonly regular: Uint8Array
  readonly bold: Uint8Array
}

export interface PdfWords {
  readonly title: string
  readonly author: string
  readonly subject: string
  /** "2026-03-04"; stands in the document as the date of its making. */
  readonly date: string
  readonly colouring: Colouring
  /** Default: one for each sheet. */
  readonly bookmarks?: readonly Bookmark[]
  /** A file to be carried inside. */
  readonly attachment: { readonly name: string; readonly bytes: Uint8Array; readonly mime: string }
}

/** Sheets as a PDF with bookmarks and links. The same sheets and words give the same bytes, on any machine. */
export function pdfOf(sheets: readonly Sheet[], words: PdfWords, fonts: Fonts): Uint8Array {
  const [first] = sheets
  if (!first) throw new RangeError('there is no sheet to print')
  const pdf = new jsPDF({
    unit: 'mm',
    format: [first.w, first.h],
    orientation: orientationOf(first),
    compress: true,
    putOnlyUsedFonts: true,
  })
  pdf.setFileId(digest([binary(words.attachment.bytes), words.date, words.title]))
  pdf.setCreationDate(creationDate(words.date))
  pdf.setProperties({
    title: words.title,
    author: words.author,
    subject: words.subject,
    creator: 'Loomwright',
  })
  pdf.setDisplayMode('fullpage', 'single', 'UseOutlines')
  addFont(pdf, 'regular.ttf', fonts.regular, 'normal')
  addFont(pdf, 'bold.ttf', fonts.bold, 'bold')
  sheets.forEach((sheet, i) => {
    if (i > 0) pdf.addPage([sheet.w, sheet.h], orientationOf(sheet))
    paint(pdf, sheet.marks, words.colouring)
    for (const { x, y, w, h, sheet: to } of sheet.links) pdf.link(x, y, w, h, { pageNumber: to + 1 })
  })
  addBookmarks(pdf, words.bookmarks ?? sheets.map(({ title }, page) => ({ title, page, under: [] })), null)
  attach(pdf, words.attachment.name, words.attachment.bytes, words.attachment.mime)
  return new Uint8Array(pdf.output('arraybuffer'))
}

const orientationOf = ({ w, h }: Sheet): 'portrait' | 'landscape' => (h > w ? 'portrait' : 'landscape')

function addBookmarks(pdf: jsPDF, bookmarks: readonly Bookmark[], above: OutlineItem | null): void {
  for (const { title, page, under } of bookmarks)
    addBookmarks(pdf, under, pdf.outline.add(above, title, { pageNumber: page + 1 }))
}

function addFont(pdf: jsPDF, file: string, bytes: Uint8Array, style: 'normal' | 'bold'): void {
  pdf.addFileToVFS(file, binary(bytes))
  pdf.addFont(file, FAMILY, style)
}

/** Noon of the day, in universal time; a date that is none gives the first day that jsPDF takes. */
function creationDate(date: string): string {
  const found = /^(20[0-3]\d)-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])/.exec(date)
  return `D:${found ? `${found[1]}${found[2]}${found[3]}` : '20000101'}120000+00'00'`
}

/** 32 hexadecimal digits that differ where the texts differ: four rounds of FNV-1a. A label, not a safeguard. */
function digest(texts: readonly string[]): string {
  let digits = ''
  for (let round = 0; round < 4; round++) {
    let hash = 0x811c9dc5 ^ round
    for (const text of texts)
      for (let i = 0; i <= text.length; i++) {
        hash ^= i < text.length ? text.charCodeAt(i) : 0x1f
        hash = Math.imul(hash, 0x01000193)
      }
    digits += (hash >>> 0).toString(16).padStart(8, '0')
  }
  return digits
}
