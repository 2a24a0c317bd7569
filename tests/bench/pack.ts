import { readFileSync } from 'node:fs'
import { readFonts } from '../../app/cli/fonts'
import { packPdf } from '../../app/print/packpdf'
import {
  analyse,
  assemble,
  type Design,
  makeSection,
  PACK_READERS,
  type PackReader,
  readDesign,
  sectionsNamed,
  usualContents,
} from '../../engine/index'
import { DEMOS } from '../scenarios/demos/all'

const ROUNDS = 3

/**
 * Packs of the demos from the design to the bytes of the PDF, everything worked out afresh: what each takes, and what ten
 * sheets of it take. Time of the processor (the least of some rounds), so that other work on the machine does not count.
 */
export async function packBench(): Promise<string[]> {
  const fonts = await readFonts()
  const lines: string[] = []
  for (const { file } of DEMOS) {
    const { design } = readDesign(
      readFileSync(new URL(`../../public/demos/${file}`, import.meta.url), 'utf8'),
    )
    if (!design) throw new Error(`${file} is no design`)
    for (const reader of Object.keys(PACK_READERS) as PackReader[]) {
      let sheets = 0
      const ms = leastMs(ROUNDS, () => {
        const pack = packOf(design, reader)
        sheets = pack.sheets.length
        packPdf(design, pack, { fonts, colouring: 'colour' })
      })
      const ten = (ms / sheets) * 10
      lines.push(
        `${file.replace('.json', '').padEnd(18)} ${reader.padEnd(9)} ${String(sheets).padStart(3)} sheets ${ms.toFixed(0).padStart(6)} ms, ten of them ${ten.toFixed(0).padStart(5)} ms`,
      )
    }
  }
  return lines
}

function leastMs(rounds: number, work: () => void): number {
  const times = Array.from({ length: rounds }, () => {
    const start = process.cpuUsage()
    work()
    const { user, system } = process.cpuUsage(start)
    return (user + system) / 1000
  })
  return Math.min(...times)
}

function packOf(design: Design, reader: PackReader) {
  const context = { design, ...analyse(design), paper: 'A3', view: 'single-line' } as const
  const made = sectionsNamed(usualContents(reader)).map((s) => makeSection(s, context))
  return assemble(reader, made, context)
}
