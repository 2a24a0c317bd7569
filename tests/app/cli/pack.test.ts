import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { PDFDocument } from '@cantoo/pdf-lib'
import { afterAll, describe, expect, test } from 'vitest'
import { pack } from '../../../app/cli/pack'
import { writeDesign } from '../../../engine'
import { design } from '../../build'

const folder = mkdtempSync(join(tmpdir(), 'pack-'))
afterAll(() => rmSync(folder, { recursive: true }))
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

/** Page sizes of a PDF in whole millimetres: a point is 25.4/72 mm. */
async function sizes(path: string): Promise<string[]> {
  const pdf = await PDFDocument.load(readFileSync(path), { updateMetadata: false })
  return pdf.getPages().map((p) => {
    const { width, height } = p.getSize()
    return `${Math.round((width * 25.4) / 72)} × ${Math.round((height * 25.4) / 72)}`
  })
}

describe('loomwright pack', () => {
  test('writes a pack for each reader, and nothing else unasked', async () => {
    const to = join(folder, 'all')
    const { status } = await run(file, '--out', to)
    expect(status).toBe(0)
    expect(readdirSync(to).sort()).toEqual(['customer.pdf', 'designer.pdf', 'workshop.pdf'])
    const titles = ['customer', 'designer', 'workshop'].map(async (reader) =>
      (await PDFDocument.load(readFileSync(join(to, `${reader}.pdf`)), { updateMetadata: false })).getTitle(),
    )
    expect(await Promise.all(titles)).toEqual([
      'Pack: customer’s pack',
      'Pack: designer’s pack',
      'Pack: workshop pack',
    ])
  })

  test('one reader, contents and their order, paper, and each sheet as SVG and PNG', async () => {
    const to = join(folder, 'one')
    const wish = ['--for', 'workshop', '--contents', 'labels,schematic', '--paper', 'A4', '--svg', '--png']
    const { status, printed } = await run(file, '--out', to, ...wish)
    expect(status).toBe(0)
    const all = await sizes(join(to, 'workshop.pdf'))
    // Contents, then the labels, upright; then the schematic, across.
    expect(all[0]).toBe('210 × 297')
    expect(all.at(-1)).toBe('297 × 210')
    expect(all.indexOf('297 × 210')).toBeGreaterThan(2)
    for (const kind of ['svg', 'png'])
      expect(printed.filter((p) => p.endsWith(`.${kind}`)).length).toBe(all.length)
    expect(readFileSync(join(to, 'workshop-01.svg'), 'utf8')).toContain('viewBox="0 0 210 297"')
    const png = readFileSync(join(to, 'workshop-01.png'))
    // PNG (ISO/IEC 15948): signature, then IHDR with width and height; 200 dots an inch of 25.4 mm.
    expect(png.subarray(1, 4).toString('latin1')).toBe('PNG')
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([
      Math.round((210 / 25.4) * 200),
      Math.round((297 / 25.4) * 200),
    ])
  })

  test('markers on heat-shrink where asked', async () => {
    const van = new URL('../../../public/demos/camping-trailer.json', import.meta.url).pathname
    const titles = async (...more: string[]) => {
      const wish = ['--for', 'workshop', '--contents', 'labels', '--svg', ...more]
      const { printed } = await run(van, '--out', join(folder, `labels${more}`), ...wish)
      const pictures = printed.filter((p) => p.endsWith('.svg')).map((p) => readFileSync(p, 'utf8'))
      return pictures.map((p) => /<title>(.*)<\/title>/.exec(p)![1])
    }
    expect(await titles()).toContain('Conductor markers, 1 of 2')
    expect((await titles('--heat-shrink')).join()).toContain('Conductor markers, heat-shrink 4.8 mm')
  })

  test.each([
    [['--paper', 'a5'], 'There is no paper A5'],
    [['--blue'], 'There is no --blue'],
    [['--for', 'everyone'], 'There is no pack for everyone'],
    [['--contents', 'schematic,poem'], 'no section of a pack is called poem'],
    [['--contents'], 'wants something after it'],
  ])('%j: status 2, what is wrong, and how it is used', async (args, said) => {
    const { status, complained } = await run(file, '--out', folder, ...args)
    expect(status).toBe(2)
    expect(complained).toContain(said)
    expect(complained).toContain('Usage')
  })

  test('no folder: status 2', async () => expect((await run(file)).status).toBe(2))

  test('a place that cannot be written: status 2', async () => {
    const { status, complained } = await run(file, '--out', join(file, 'inside'))
    expect(status).toBe(2)
    expect(complained).toContain('Cannot write')
  })
})
