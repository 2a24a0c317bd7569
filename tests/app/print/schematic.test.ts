import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { PDFArray, PDFDict, PDFDocument, PDFName } from '@cantoo/pdf-lib'
import { describe, expect, test } from 'vitest'
import { designPdf } from '../../../app/print/designpdf'
import { analyse, type Design, readDesign, schematicSheets, writeDesign } from '../../../engine'
import { readFonts } from '../../reference/typeface/read'

const DEMOS = ['camping-trailer', 'mountain-cabin', 'planted-mistakes']

function demo(name: string): Design {
  const file = new URL(`../../../public/demos/${name}.json`, import.meta.url)
  const { design } = readDesign(readFileSync(file, 'utf8'))
  if (!design) throw new Error(`${name} is no design`)
  return design
}

function printed(
  design: Design,
  options: { date?: string; colouring?: 'colour' | 'black' } = {},
): Uint8Array {
  const { answers, findings } = analyse(design)
  const { date = design.settings.date, colouring = 'colour' } = options
  const sheets = schematicSheets(design, answers, findings, { date })
  return designPdf(design, sheets, { title: 'Schematic', fonts: readFonts(), colouring, date })
}

/** Text of the pages as poppler's pdftotext reads it: a reader that knows nothing of this project. */
function textOf(pdf: Uint8Array): string {
  const file = join(mkdtempSync(join(tmpdir(), 'sheet-')), 'sheet.pdf')
  writeFileSync(file, pdf)
  return execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8', maxBuffer: 1 << 26 })
}

describe.each(DEMOS)('%s on paper', (name) => {
  const design = demo(name)
  const pdf = printed(design)

  test('each line of the sheet index leads to its page', async () => {
    const file = await PDFDocument.load(pdf)
    const pages = file.getPages()
    const links = pages[0]!.node.Annots()!
    const targets = Array.from({ length: links.size() }, (_, i) => {
      const to = links.lookup(i, PDFDict).lookup(PDFName.of('Dest'), PDFArray).get(0)
      return pages.findIndex((page) => page.ref === to)
    })
    expect(targets).toEqual(pages.slice(1).map((_, i) => i + 1))
  })

  test('every conductor number, designation and load name can be searched for', () => {
    const text = textOf(pdf)
    const words = new Set(text.split(/[\s·/,:()→]+/))
    for (const { number } of design.conductors) expect(words, number).toContain(number)
    for (const { designation } of design.parts) expect(words, designation).toContain(designation)
    for (const part of design.parts)
      for (const word of part.name.split(/[\s·/,:()→]+/).filter((w) => w !== ''))
        expect(words, part.name).toContain(word)
  })

  test('says what it was checked against, and never that it is sound', () => {
    const text = textOf(pdf).replaceAll(/\s+/g, ' ')
    expect(text).toContain('Local codes and the judgement of a licensed practitioner')
    expect(text).toContain('Checks made')
    expect(text).toContain('Rule set')
    const own = design.parts.reduce((left, { name }) => (name ? left.replaceAll(name, '') : left), text)
    expect(own.toLowerCase()).not.toMatch(/\b(safe|compliant|compliance)\b/)
  })

  test('the same design and date give the same bytes, another date gives others', () => {
    expect(Buffer.compare(pdf, printed(demo(name)))).toBe(0)
    expect(Buffer.compare(pdf, printed(design, { date: '2031-01-01' }))).not.toBe(0)
  })

  test('is a document with title, bookmarks and the design file inside', async () => {
    const read = await PDFDocument.load(pdf, { updateMetadata: false })
    expect(read.getTitle()).toBe(`${design.settings.name}: schematic`)
    expect(read.getAuthor()).toBe(design.settings.designer)
    expect(read.getCreationDate()?.toISOString()).toBe(`${design.settings.date}T12:00:00.000Z`)
    expect(read.catalog.has(PDFName.of('Outlines'))).toBe(true)
    const [inside] = read.getAttachments()
    expect(inside!.name).toBe('design.loomwright.json')
    expect(new TextDecoder().decode(inside!.data)).toBe(writeDesign(design))
    for (const page of read.getPages()) {
      const { width, height } = page.getSize()
      expect([width, height].map((points) => Math.round((points * 25.4) / 72))).toEqual([420, 297])
    }
  })
})

test('a design without a name, a date and anything on it has its sheets all the same', async () => {
  const empty = { ...demo('camping-trailer'), parts: [], conductors: [] }
  const blank = { ...empty, settings: { ...empty.settings, name: '', date: 'soon', designer: '水 "(\\' } }
  const read = await PDFDocument.load(printed(blank), { updateMetadata: false })
  expect(read.getPageCount()).toBeGreaterThanOrEqual(2)
  expect(read.getTitle()).toBe('Schematic')
})

test('black prints black: no colour is set but greys', () => {
  const file = join(mkdtempSync(join(tmpdir(), 'sheet-')), 'sheet.pdf')
  writeFileSync(file, printed(demo('mountain-cabin'), { colouring: 'black' }))
  const picture = execFileSync('pdftoppm', ['-r', '40', '-f', '1', '-l', '1', file], { maxBuffer: 1 << 26 })
  const start = picture.indexOf('255\n') + 4
  let coloured = 0
  for (let i = start; i + 2 < picture.length; i += 3) {
    const [r, g, b] = [picture[i]!, picture[i + 1]!, picture[i + 2]!]
    if (Math.max(r, g, b) - Math.min(r, g, b) > 8) coloured++
  }
  expect(picture.length).toBeGreaterThan(100_000)
  expect(coloured).toBe(0)
})
