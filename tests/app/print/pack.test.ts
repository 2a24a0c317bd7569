import { readFileSync } from 'node:fs'
import { PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName, PDFRef, PDFString } from '@cantoo/pdf-lib'
import { describe, expect, test } from 'vitest'
import { packPdf } from '../../../app/print/packpdf'
import {
  analyse,
  assemble,
  type Bookmark,
  type Design,
  makeSection,
  PACK_READERS,
  type Pack,
  type PackReader,
  readDesign,
  sectionsNamed,
  usualContents,
  writeDesign,
} from '../../../engine'
import { readFonts } from '../../reference/typeface/read'
import { textsOf, throughPdfLib } from './pdftext'

const READERS = Object.keys(PACK_READERS) as PackReader[]
const DEMOS = ['camping-trailer', 'veterinary-van', 'planted-mistakes', 'expedition-truck', 'mountain-cabin']

function demo(name: string): Design {
  const file = new URL(`../../../public/demos/${name}.json`, import.meta.url)
  const { design } = readDesign(readFileSync(file, 'utf8'))
  if (!design) throw new Error(`${name} is no design`)
  return design
}

/** Each pack of a design as usual. */
function packsOf(design: Design): Map<PackReader, { readonly pack: Pack; readonly pdf: Uint8Array }> {
  const context = { design, ...analyse(design), paper: 'A3', view: 'single-line' } as const
  const made = new Map(
    sectionsNamed(READERS.flatMap(usualContents)).map((s) => [s.key, makeSection(s, context)] as const),
  )
  return new Map(
    READERS.map((reader) => {
      const pack = assemble(
        reader,
        usualContents(reader).map((key) => made.get(key)!),
        context,
      )
      return [reader, { pack, pdf: packPdf(design, pack, { fonts: readFonts(), colouring: 'colour' }) }]
    }),
  )
}

/** The outline of a PDF as another library reads it. */
function outlineOf(file: PDFDocument): Bookmark[] {
  const pages = file.getPages().map((p) => p.ref)
  const below = (node: PDFDict): Bookmark[] => {
    const found: Bookmark[] = []
    let item = node.lookupMaybe(PDFName.of('First'), PDFDict)
    for (; item; item = item.lookupMaybe(PDFName.of('Next'), PDFDict)) {
      const title = item.lookup(PDFName.of('Title'))
      const to = item.lookup(PDFName.of('Dest'), PDFArray).get(0)
      found.push({
        title: title instanceof PDFString || title instanceof PDFHexString ? title.decodeText() : '',
        page: pages.indexOf(to as PDFRef),
        under: below(item),
      })
    }
    return found
  }
  return below(file.catalog.lookup(PDFName.of('Outlines'), PDFDict))
}

function linksOf(file: PDFDocument, page: number): number[] {
  const pages = file.getPages()
  const links = pages[page]!.node.Annots()
  return Array.from({ length: links?.size() ?? 0 }, (_, i) => {
    const to = links!.lookup(i, PDFDict).lookup(PDFName.of('Dest'), PDFArray).get(0)
    expect(to).toBeInstanceOf(PDFRef)
    return pages.findIndex((p) => p.ref === to)
  })
}

const signs = (bookmarks: readonly Bookmark[]): Bookmark[] =>
  bookmarks.map((b) => ({ ...b, under: signs(b.under) }))

describe.each(DEMOS)('packs of %s', (name) => {
  const design = demo(name)
  const packs = packsOf(design)

  test.each(READERS)('%s: bookmarks, page numbers and links are those of the pack', async (reader) => {
    const { pack, pdf } = packs.get(reader)!
    const file = await PDFDocument.load(pdf, { updateMetadata: false })
    expect(outlineOf(file)).toEqual(signs(pack.bookmarks))
    expect(file.getPageCount()).toBe(pack.sheets.length)
    const texts = await textsOf(pdf)
    for (const [i, text] of texts.entries()) expect(text).toContain(`Page ${i + 1} / ${texts.length}`)
    const contents = pack.bookmarks.find((b) => b.title === 'Contents')!
    const said = texts[contents.page]!
    for (const { title, page } of pack.bookmarks.filter((b) => b.page > contents.page)) {
      expect(said).toMatch(new RegExp(`${title}\\s+${page + 1}\\b`))
      expect(linksOf(file, contents.page), title).toContain(page)
    }
    // Every link of every page leads to a page that there is, and never to its own.
    for (const [i] of texts.entries())
      for (const to of linksOf(file, i)) {
        expect(to).toBeGreaterThanOrEqual(0)
        expect(to).not.toBe(i)
      }
  })

  test.each(READERS)('%s: every conductor and every load can be searched for', async (reader) => {
    const text = (await textsOf(packs.get(reader)!.pdf)).join('\n')
    const words = new Set(text.split(/[\s·/,:()→]+/))
    for (const { number } of design.conductors) expect(words, number).toContain(number)
    for (const part of design.parts) {
      expect(words, part.designation).toContain(part.designation)
      for (const word of part.name.split(/[\s·/,:()→]+/).filter((w) => w !== ''))
        expect(words, part.name).toContain(word)
    }
  })

  test.each(READERS)('%s: the design inside is the design', async (reader) => {
    const file = await PDFDocument.load(packs.get(reader)!.pdf, { updateMetadata: false })
    expect(file.getTitle()).toBe(`${design.settings.name}: ${PACK_READERS[reader].toLowerCase()}`)
    expect(new TextDecoder().decode(file.getAttachments()[0]!.data)).toBe(writeDesign(design))
  })

  test('the same design gives the same bytes', () => {
    const again = packsOf(demo(name))
    for (const reader of READERS)
      expect(Buffer.compare(packs.get(reader)!.pdf, again.get(reader)!.pdf), reader).toBe(0)
  })
})

test('both readers of PDF text find the same signs', async () => {
  const { pdf } = packsOf(demo('camping-trailer')).get('customer')!
  const signsOf = (pages: readonly string[]) =>
    pages.map((p) => [...p.replaceAll(/\s/g, '')].sort().join('')).join('\n')
  const [own, poppler] = [signsOf(await throughPdfLib(pdf)), signsOf(await textsOf(pdf))]
  expect(own.length).toBeGreaterThan(5000)
  expect(own === poppler).toBe(true)
})
