import { readFileSync } from 'node:fs'
import { PDFDocument } from '@cantoo/pdf-lib'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readBytes } from '../../../app/files/readbytes'
import { designPdf } from '../../../app/print/designpdf'
import { type Design, readDesign, symbolSheets, writeDesign } from '../../../engine'
import { design as build } from '../../build'
import { readFonts } from '../../reference/typeface/read'

const DEMOS = ['camping-trailer', 'expedition-truck', 'mountain-cabin', 'veterinary-van', 'planted-mistakes']

function demo(name: string): Design {
  const file = new URL(`../../../public/demos/${name}.json`, import.meta.url)
  const { design } = readDesign(readFileSync(file, 'utf8'))
  if (!design) throw new Error(`${name} is no design`)
  return design
}

const [sheet] = symbolSheets()
const printed = (design: Design): Uint8Array =>
  designPdf(design, [sheet!], { title: 'Pack', fonts: readFonts(), colouring: 'colour' })

test.each(DEMOS)('%s comes out of its PDF as it went in', (name) => {
  const { design, problems, from } = readBytes(printed(demo(name)))
  expect(problems).toEqual([])
  expect(from).toBe('PDF')
  expect(writeDesign(design!)).toBe(writeDesign(demo(name)))
})

test('any signs in the names come out as they went in', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (name) => {
      const design = build({ name }).part('load', 'E1', {}, { name }).build()
      expect(writeDesign(readBytes(printed(design)).design!)).toBe(writeDesign(design))
    }),
    { numRuns: 30 },
  )
})

/** pdf-lib stores the document anew: other numbers, other order, objects packed together. */
describe.each([true, false])('stored again by another library, objects packed: %s', (useObjectStreams) => {
  test('the design is found all the same', async () => {
    const design = demo('camping-trailer')
    const again = await (await PDFDocument.load(printed(design))).save({ useObjectStreams })
    expect(writeDesign(readBytes(again).design!)).toBe(writeDesign(design))
  })

  test('among other files', async () => {
    const design = demo('camping-trailer')
    const document = await PDFDocument.load(printed(design))
    await document.attach(new TextEncoder().encode('Dear customer'), 'letter.txt')
    const { design: found, problems } = readBytes(await document.save({ useObjectStreams }))
    expect(problems).toEqual([])
    expect(writeDesign(found!)).toBe(writeDesign(design))
  })
})

describe('what cannot be opened is told', () => {
  const whole = printed(demo('camping-trailer'))
  const said = (bytes: Uint8Array): string => {
    const { design, problems } = readBytes(bytes)
    expect(design).toBeUndefined()
    return problems.map((p) => `${p.path} ${p.expected} ${p.found}`).join('\n')
  }
  const at = Buffer.from(whole).indexOf('/EmbeddedFile')

  test('a PDF without a file inside', async () => {
    const empty = await PDFDocument.create()
    empty.addPage()
    expect(said(await empty.save())).toContain('a PDF without a file inside')
  })

  test('a PDF that was cut off inside the design', () =>
    expect(said(whole.subarray(0, at + 600))).toContain('cut off'))

  test('a byte of the design that was altered', () => {
    const altered = whole.slice()
    altered[at + 700]! ^= 0x40
    expect(said(altered)).toContain('damaged')
  })

  test('a PDF with a password', () =>
    expect(said(new TextEncoder().encode('%PDF-1.7\ntrailer <</Encrypt 9 0 R>>'))).toContain('password'))

  test('a file inside that is no design', async () => {
    const letter = await PDFDocument.create()
    letter.addPage()
    await letter.attach(new TextEncoder().encode('Dear customer'), 'letter.txt')
    expect(said(await letter.save())).toContain('design inside the PDF')
  })

  test('any bytes: a design that is whole, or problems; never a throw', () => {
    fc.assert(
      fc.property(
        fc.nat({ max: whole.length }),
        fc.nat({ max: 255 }),
        fc.nat({ max: 9 }),
        (where, byte, cut) => {
          const altered = whole.slice(0, cut === 0 ? where : whole.length)
          if (where < altered.length) altered[where] = byte
          const { design, problems } = readBytes(altered)
          if (design) expect(writeDesign(design)).toBe(writeDesign(demo('camping-trailer')))
          else expect(problems.length).toBeGreaterThan(0)
        },
      ),
      { numRuns: 60 },
    )
  })
})
