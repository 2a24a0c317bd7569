import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { network } from '../../../app/cli/network'
import { Sketch } from '../../reference/sketch'

const folder = mkdtempSync(join(tmpdir(), 'network-'))
afterAll(() => rmSync(folder, { recursive: true }))

const form = new Sketch()
  .wire('b+', 'l+', 0.01, 'feed')
  .device('battery', 'b+', '-', -10, 50, 12)
  .device('lamp', 'l+', '-', -4, 0)
  .form()
const good = join(folder, 'good.json')
writeFileSync(good, JSON.stringify(form))
const bad = join(folder, 'bad.json')
writeFileSync(bad, JSON.stringify({ ...form, nodes: [] }))

async function run(...args: string[]) {
  const printed: string[] = []
  const complaints: string[] = []
  const status = await network(args, { print: (t) => printed.push(t), complain: (t) => complaints.push(t) })
  return { status, printed: printed.join('\n'), complaints }
}

describe('network command', () => {
  it('prints the report as JSON', async () => {
    const { status, printed, complaints } = await run(good)
    expect(status).toBe(0)
    expect(complaints).toEqual([])
    expect(JSON.parse(printed).branches[0]).toMatchObject({ id: 'feed', envelope: [0, 4] })
  })

  it('is reached from the shell', () => {
    const main = new URL('../../../app/cli/main.ts', import.meta.url).pathname
    const printed = execFileSync('npx', ['tsx', main, 'network', good], { encoding: 'utf8' })
    expect(JSON.parse(printed).counts).toEqual({ nodes: 3, branches: 1, devices: 2, nets: 2 })
  }, 60_000)

  it('writes it to a file instead', async () => {
    const file = join(folder, 'out.json')
    expect(await run(good, '--out', file)).toEqual({ status: 0, printed: '', complaints: [] })
    expect(JSON.parse(readFileSync(file, 'utf8')).counts).toEqual({
      nodes: 3,
      branches: 1,
      devices: 2,
      nets: 2,
    })
  })

  it('lists what is wrong with the file, a line each', async () => {
    const { status, printed, complaints } = await run(bad)
    expect(status).toBe(1)
    expect(printed).toBe('')
    expect(complaints[0]).toBe('branches[0].from: expected the name of a node, found the text "b+"')
    expect(complaints.length).toBe(6)
  })

  it.each([[[]], [[good, bad]], [[good, '--out']], [['--loud', good]]])(
    'tells how it is used: %j',
    async (args) => {
      const { status, complaints } = await run(...args)
      expect(status).toBe(2)
      expect(complaints[0]).toMatch(/^Usage: /)
    },
  )

  it('says what it cannot read or write', async () => {
    expect((await run(join(folder, 'none.json'))).status).toBe(2)
    expect((await run(good, '--out', join(folder, 'no', 'where.json'))).status).toBe(2)
  })
})
