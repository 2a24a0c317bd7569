import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import {
  decodePDFRawStream,
  PDFDict,
  PDFDocument,
  PDFName,
  type PDFPage,
  PDFRawStream,
} from '@cantoo/pdf-lib'

/** Text of a PDF, page by page: as poppler's pdftotext reads it, a reader that knows nothing of this project. */
export async function textsOf(pdf: Uint8Array): Promise<string[]> {
  return throughPoppler(pdf) ?? (await throughPdfLib(pdf))
}

/** null: pdftotext is not installed. */
function throughPoppler(pdf: Uint8Array): string[] | null {
  const folder = mkdtempSync(join(tmpdir(), 'text-'))
  const file = join(folder, 'pack.pdf')
  writeFileSync(file, pdf)
  try {
    const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8', maxBuffer: 1 << 27 })
    return text.split('\f').slice(0, -1)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null
    throw error
  } finally {
    rmSync(folder, { recursive: true })
  }
}

/** The strings that a page shows, in the order in which they are painted, by the maps to Unicode of its fonts. */
export async function throughPdfLib(pdf: Uint8Array): Promise<string[]> {
  const document = await PDFDocument.load(pdf, { updateMetadata: false })
  return document.getPages().map((page) => {
    const maps = fontMaps(page)
    let map = new Map<string, string>()
    const words: string[] = []
    for (const [, font, hex] of contentOf(page).matchAll(/\/(F\d+) [\d.]+ Tf|<([0-9A-Fa-f]*)> Tj/g)) {
      if (font !== undefined) map = maps.get(font) ?? new Map()
      else words.push((hex!.toLowerCase().match(/.{4}/g) ?? []).map((code) => map.get(code) ?? '').join(''))
    }
    return words.join('\n')
  })
}

/** What each page paints, as the operators of ISO 32000-1 spell it. */
export async function contentsOf(pdf: Uint8Array): Promise<string[]> {
  const document = await PDFDocument.load(pdf, { updateMetadata: false })
  return document.getPages().map(contentOf)
}

const decoded = (stream: unknown): string =>
  stream instanceof PDFRawStream ? Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1') : ''

const contentOf = ({ node, doc }: PDFPage): string => {
  const contents = node.Contents()
  if (!contents) return ''
  if (contents instanceof PDFRawStream) return decoded(contents)
  return 'asArray' in contents
    ? contents
        .asArray()
        .map((ref) => decoded(doc.context.lookup(ref)))
        .join('\n')
    : ''
}

/** Of each font of a page, Unicode text by glyph code. */
function fontMaps({ node }: PDFPage): Map<string, Map<string, string>> {
  const fonts = node.Resources()!.lookup(PDFName.of('Font'), PDFDict)
  return new Map(
    fonts.keys().map((name) => {
      const cmap = decoded(fonts.lookup(name, PDFDict).lookup(PDFName.of('ToUnicode')))
      const pairs = [...cmap.matchAll(/<([0-9a-fA-F]{4})>\s*<([0-9a-fA-F]{4})>/g)]
      return [
        name.decodeText(),
        new Map(
          pairs.map(([, code, sign]) => [
            code!.toLowerCase(),
            String.fromCharCode(Number.parseInt(sign!, 16)),
          ]),
        ),
      ] as const
    }),
  )
}
