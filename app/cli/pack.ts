import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { analyse, type PaperSize, schematicSheets } from '../../engine/index'
import type { Colouring } from '../print/inks'
import type { Fonts } from '../print/pdf'
import { schematicPdf } from '../print/schematicpdf'
import { sheetSvg } from '../print/sheetsvg'
import type { Out } from './network'
import { openFile, reason } from './openfile'
import { workshopFiles } from './workshopfiles'

export const PACK_USAGE =
  'npm run loomwright -- pack FILE --out DIR [--paper A2|A3|A4] [--both-poles] [--black] [--svg]'

interface Wish {
  readonly file: string
  readonly out: string
  readonly paper: PaperSize
  readonly view: 'single-line' | 'both-poles'
  readonly colouring: Colouring
  readonly svg: boolean
}

/**
 * Writes the schematic of a design file as schematic.pdf, its schedules and labels as PDF, workbook and CSV, and each
 * sheet of the schematic as SVG where asked. Exit status: 0 written, 1 the file is not a sound design, 2 the command
 * was given wrongly or a file could not be read or written.
 */
export async function pack(args: readonly string[], out: Out): Promise<number> {
  const wish = wishOf(args)
  if (!wish) {
    out.complain(`Usage: ${PACK_USAGE}`)
    return 2
  }
  const opened = await openFile(wish.file, out)
  if (typeof opened === 'number') return opened
  const { design, problems } = opened
  const { answers, findings } = analyse(design)
  const { paper, view, colouring } = wish
  const fonts = await readFonts()
  const files: [name: string, content: Uint8Array | string][] = [
    ['schematic.pdf', schematicPdf(design, answers, findings, { paper, view, colouring, fonts })],
    ...workshopFiles(design, answers, { paper, colouring, fonts }),
  ]
  if (wish.svg)
    schematicSheets(design, answers, findings, { paper, view }).forEach((sheet, i) => {
      files.push([`schematic-${String(i + 1).padStart(2, '0')}.svg`, sheetSvg(sheet, colouring)])
    })
  try {
    await mkdir(wish.out, { recursive: true })
    for (const [name, content] of files) {
      await writeFile(join(wish.out, name), content)
      out.print(join(wish.out, name))
    }
  } catch (error) {
    out.complain(`Cannot write to ${wish.out}: ${reason(error)}`)
    return 2
  }
  return problems.length > 0 ? 1 : 0
}

function wishOf(args: readonly string[]): Wish | null {
  const files: string[] = []
  let [out, paper]: [string | undefined, string | undefined] = [undefined, 'A3']
  const flags = new Set<string>()
  for (let i = 0; i < args.length; i++) {
    const word = args[i]!
    if (word === '--out') out = args[++i]
    else if (word === '--paper') paper = args[++i]
    else if (word === '--both-poles' || word === '--black' || word === '--svg') flags.add(word)
    else if (word.startsWith('-')) return null
    else files.push(word)
  }
  const [file] = files
  if (file === undefined || files.length !== 1 || out === undefined) return null
  if (paper !== 'A2' && paper !== 'A3' && paper !== 'A4') return null
  return {
    ...{ file, out, paper, svg: flags.has('--svg') },
    view: flags.has('--both-poles') ? 'both-poles' : 'single-line',
    colouring: flags.has('--black') ? 'black' : 'colour',
  }
}

/** The two weights of the typeface, from the installed package. */
export async function readFonts(): Promise<Fonts> {
  const { resolve } = createRequire(import.meta.url)
  const read = async (file: string) =>
    new Uint8Array(await readFile(resolve(`@expo-google-fonts/ibm-plex-sans-condensed/${file}`)))
  return {
    regular: await read('400Regular/IBMPlexSansCondensed_400Regular.ttf'),
    bold: await read('600SemiBold/IBMPlexSansCondensed_600SemiBold.ttf'),
  }
}
