import {
  assemble,
  type MadeSection,
  makeSection,
  type Pack,
  type PackContext,
  sectionsNamed,
  usualContents,
} from '../../engine/index'
import { packPdf } from '../print/packpdf'
import type { Fonts } from '../print/pdf'
import { sheetSvg } from '../print/sheetsvg'
import { csvFiles, workbookOf } from '../print/tables'
import type { PackWish } from './packwish'
import { sheetPng } from './sheetpng'

type File = readonly [name: string, content: Uint8Array | string]

/** Everything that was asked for, file by file. A section that several packs hold is made once. */
export function* packFiles(context: PackContext, wish: PackWish, fonts: Fonts): Generator<File> {
  const made = new Map<string, MadeSection>()
  for (const reader of wish.readers) {
    const sections = sectionsNamed(wish.contents ?? usualContents(reader)).map((section) => {
      const known = made.get(section.key) ?? makeSection(section, context)
      made.set(section.key, known)
      return known
    })
    const pack = assemble(reader, sections, context)
    yield [`${reader}.pdf`, packPdf(context.design, pack, { fonts, colouring: wish.colouring })]
    yield* pictures(reader, pack, wish)
  }
  yield* tables(context, wish)
}

function* pictures(reader: string, { sheets }: Pack, { also, colouring }: PackWish): Generator<File> {
  if (!also.has('svg') && !also.has('png')) return
  for (const [i, sheet] of sheets.entries()) {
    const name = `${reader}-${String(i + 1).padStart(2, '0')}`
    const svg = sheetSvg(sheet, colouring)
    if (also.has('svg')) yield [`${name}.svg`, svg]
    if (also.has('png')) yield [`${name}.png`, sheetPng(svg, sheet.w)]
  }
}

function* tables(context: PackContext, { also }: PackWish): Generator<File> {
  if (also.has('xlsx')) yield ['schedules.xlsx', workbookOf(context)]
  if (also.has('csv')) yield* csvFiles(context)
}
