import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { PDFDocument } from '@cantoo/pdf-lib'
import { describe, expect, test } from 'vitest'
import { pack } from '../../../app/cli/pack'
import { writeDesign } from '../../../engine'
import { design } from '../../build'

const folder = mkdtempSync(join(tmpdir(), 'pack-'))
const file = join(folder, 'design.json')
writeFileSync(
  file,
  writeDesign(
    design({ name: 'Pack' })
      .part('battery', 'G1')
      .part('load', 'E1', {}, { x: 100 })
      .join('G1.+', 'E1.+')
      .build(),
  ),
)

async function run(...args: string[]): Promise<{ status: number; printed: string[]; complained: string }> {
  const [printed, complained]: [string[], string[]] = [[], []]
  const out = { print: (t: string) => printed.push(t), complain: (t: string) => complained.push(t) }
  return { status: await pack(args, out), printed, complained: complained.join('\n') }
}

describe('loomwright pack', () => {
  test('writes the schematic on the paper that is asked for, and its sheets as SVG', async () => {
    const to = join(folder, 'out')
    const { status, printed } = await run(file, '--out', to, '--paper', 'A4', '--svg')
    expect(status).toBe(0)
    const pdf = await PDFDocument.load(readFileSync(join(to, 'schematic.pdf')), { updateMetadata: false })
    const { width, height } = pdf.getPage(0).getSize()
    expect([width, height].map((points) => Math.round((points * 25.4) / 72))).toEqual([297, 210])
    const pictures = printed.filter((p) => p.endsWith('.svg'))
    expect(pictures.length).toBe(pdf.getPageCount())
    expect(readFileSync(pictures[0]!, 'utf8')).toContain('viewBox="0 0 297 210"')
  })

  test('no folder, a paper that there is not, an unknown word: status 2 and how it is used', async () => {
    for (const args of [
      [file],
      [file, '--out', folder, '--paper', 'A5'],
      [file, '--out', folder, '--blue'],
    ]) {
      const { status, complained } = await run(...args)
      expect(status).toBe(2)
      expect(complained).toContain('Usage')
    }
  })

  test('a place that cannot be written: status 2', async () => {
    const { status, complained } = await run(file, '--out', join(file, 'inside'))
    expect(status).toBe(2)
    expect(complained).toContain('Cannot write')
  })
})
