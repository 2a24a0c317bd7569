import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { newDesign, symbolSheets } from '../../engine/index'
import { designPdf } from '../print/designpdf'
import { readFonts } from './fonts'
import type { Out } from './network'
import { reason } from './openfile'

export const SYMBOLS_USAGE = 'npm run loomwright -- symbols --out DIR'

/** Writes every symbol as symbols.pdf. Exit status: 0 written, 2 the command was given wrongly or could not write. */
export async function symbols(args: readonly string[], out: Out): Promise<number> {
  const [flag, dir, ...more] = args
  if (flag !== '--out' || dir === undefined || more.length > 0) {
    out.complain(`Usage: ${SYMBOLS_USAGE}`)
    return 2
  }
  const fonts = await readFonts()
  const pdf = designPdf(newDesign('symbols'), symbolSheets(), {
    title: 'Symbols',
    fonts,
    colouring: 'colour',
  })
  try {
    await mkdir(dir, { recursive: true })
    await writeFile(join(dir, 'symbols.pdf'), pdf)
    out.print(join(dir, 'symbols.pdf'))
  } catch (error) {
    out.complain(`Cannot write to ${dir}: ${reason(error)}`)
    return 2
  }
  return 0
}
