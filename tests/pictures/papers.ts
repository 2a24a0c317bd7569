import { execFileSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readFonts } from '../../app/cli/fonts'
import { packPdf } from '../../app/print/packpdf'
import {
  analyse,
  assemble,
  makeSection,
  PACK_READERS,
  type PackReader,
  readDesign,
  sectionsNamed,
  usualContents,
} from '../../engine/index'
import { DEMOS } from '../scenarios/demos/all'
import { gridOf } from './grid'

/** Is there a renderer of PDF pages (poppler's pdftoppm)? */
export function canRender(): boolean {
  try {
    execFileSync('pdftoppm', ['-v'], { stdio: 'ignore' })
    return true
  } catch {
    return false
  }
}

export const READERS = Object.keys(PACK_READERS) as readonly PackReader[]
export const FILES = DEMOS.map((d) => d.file)

/** Grids of the pages of a demo's pack for a reader, as it comes without anything being chosen. */
export async function pagesOf(file: string, reader: PackReader): Promise<string[]> {
  const { design } = readDesign(readFileSync(new URL(`../../public/demos/${file}`, import.meta.url), 'utf8'))
  if (!design) throw new Error(`${file} was not read`)
  const context = { design, ...analyse(design), paper: 'A3', view: 'single-line' } as const
  const sections = sectionsNamed(usualContents(reader)).map((s) => makeSection(s, context))
  const fonts = await readFonts()
  return rendered(packPdf(design, assemble(reader, sections, context), { fonts, colouring: 'colour' }))
}

function rendered(pdf: Uint8Array): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'loomwright-pages-'))
  try {
    writeFileSync(join(folder, 'pack.pdf'), pdf)
    execFileSync('pdftoppm', ['-r', '24', '-gray', join(folder, 'pack.pdf'), join(folder, 'page')])
    return readdirSync(folder)
      .filter((name) => name.endsWith('.pgm'))
      .sort()
      .map((name) => gridOf(...greyMap(readFileSync(join(folder, name)))))
  } finally {
    rmSync(folder, { recursive: true })
  }
}

/** A binary portable grey map (P5), 8 bits. */
function greyMap(bytes: Buffer): [grey: Uint8Array, width: number, height: number] {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 64).toString('latin1'))
  if (!head) throw new Error('not a grey map of 8 bits')
  return [bytes.subarray(head[0].length), Number(head[1]), Number(head[2])]
}
