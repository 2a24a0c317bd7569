import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { check } from '../../../app/cli/check'
import { apply, builtEdit, writeDesign } from '../../../engine'
import { conductorNumbered, design } from '../../build'
import { bench } from '../../engine/rules/bench'

const folder = mkdtempSync(join(tmpdir(), 'check-'))

function fileOf(name: string, text: string): string {
  const file = join(folder, name)
  writeFileSync(file, text)
  return file
}

async function run(...args: string[]): Promise<{ status: number; printed: string; complained: string }> {
  const [printed, complained]: [string[], string[]] = [[], []]
  const out = { print: (t: string) => printed.push(t), complain: (t: string) => complained.push(t) }
  const status = await check(args, out)
  return { status, printed: printed.join('\n'), complained: complained.join('\n') }
}

/** A battery of which the positive runs to a load with no fuse: a danger in any rule set. */
const unfused = writeDesign(
  design()
    .part('battery', 'G1', { capacityAh: 100, dischargeA: 100, chargeA: 50 })
    .part('load', 'E1', { currentA: 4 }, { x: 100 })
    .join('G1.+', 'E1.+', { size: '2.5mm2', lengthM: 3, colour: 'RD' })
    .join('E1.-', 'G1.-', { size: '2.5mm2', lengthM: 3 })
    .build(),
)

/** Sound as drawn. */
const sound = bench().build()

describe('loomwright check', () => {
  test('a danger that comes from building otherwise: told apart, and status 5', async () => {
    const built = builtEdit(
      sound,
      conductorNumbered(sound, 'W2'),
      { what: 'size', value: '6mm2' },
      { at: '2026-03-04T09:30:00.000Z', by: 'tablet' },
    )
    const result = apply(sound, built)
    if (result.refused) throw new Error(result.why)
    const { status, printed } = await run(fileOf('built.json', writeDesign(result.design)))
    expect(status).toBe(5)
    expect(printed).toContain('As built, Danger:')
    expect((await run(fileOf('drawn.json', writeDesign(sound)))).printed).not.toContain('As built')
  })

  test('a danger: its words, and status 5', async () => {
    const { status, printed } = await run(fileOf('unfused.json', unfused))
    expect(status).toBe(5)
    expect(printed).toContain('Danger: No protection (P1)')
    expect(printed).toContain('Local codes and the judgement of a licensed practitioner prevail')
  })

  test('as JSON: the same findings as plain facts with their words', async () => {
    const { status, printed } = await run(fileOf('unfused.json', unfused), '--json')
    const report = JSON.parse(printed)
    expect(status).toBe(5)
    expect(report.problems).toEqual([])
    const first = report.findings.find((f: { rule: string }) => f.rule === 'P1')
    expect(first).toMatchObject({ level: 'danger', conductors: ['c1'], words: { title: 'No protection' } })
    expect(first.fix).toBeUndefined()
  })

  test('accepted findings stand apart, and the exit status goes by the open ones', async () => {
    const before = JSON.parse((await run(fileOf('open.json', unfused), '--json')).printed)
    const accepted = before.findings.map(
      (f: { key: string; level: string; actual?: { value: unknown } }) => ({
        key: f.key,
        level: f.level,
        ...(f.actual ? { actual: f.actual.value } : {}),
        reason: 'On the bench only',
      }),
    )
    const file = fileOf('accepted.json', JSON.stringify({ ...JSON.parse(unfused), accepted }))
    const { status, printed } = await run(file, '--json')
    const report = JSON.parse(printed)
    expect(status).toBe(0)
    expect(report.findings).toEqual([])
    expect(report.accepted.map((f: { key: string }) => f.key)).toEqual(
      accepted.map((f: { key: string }) => f.key),
    )
    expect((await run(file)).printed).toMatch(
      /No finding is open[\s\S]*No protection \(P1\)\n {2}On the bench only/,
    )
  })

  test('an empty design: nothing to report, status 0', async () => {
    const { status, printed } = await run(fileOf('empty.json', writeDesign(design().build())))
    expect(status).toBe(0)
    expect(printed).toContain('The checks found nothing to report.')
  })

  test('a file that is none: each problem with its place, status 1', async () => {
    const { status, printed, complained } = await run(fileOf('broken.json', '{"loomwright": 1,'))
    expect(status).toBe(1)
    expect(printed).toBe('')
    expect(complained).toMatch(/expected .+, found .+/)
  })

  test('a part that is damaged is told, and what can be read is still checked', async () => {
    const { status, printed, complained } = await run(
      fileOf('damaged.json', unfused.replace('"kind": "load"', '"kind": 7')),
    )
    expect(status).toBe(1)
    expect(complained).toContain('parts[1]')
    expect(printed).not.toBe('')
  })

  test('no file, a file that is not there, a word too many: status 2', async () => {
    for (const args of [[], ['--json'], ['a', 'b'], [join(folder, 'not-there.json')]]) {
      const { status, complained } = await run(...args)
      expect(status).toBe(2)
      expect(complained).not.toBe('')
    }
  })
})
