import { describe, expect, it } from 'vitest'
import { type Answer, analyse, type Design, readDesign, writeDesign } from '../../../engine/index'
import { Random } from '../../reference/random'
import { randomDesign } from './randomdesign'

/** Rules that tell a fault which leaves something unchecked. */
const TELLING = new Set(['J1', 'J2', 'J3', 'J6', 'J7'])

/** Answers that are none, and the thing each is about. */
function gapsOf(d: Design): { about: string; code: string; names: readonly string[] }[] {
  const { answers } = analyse(d)
  const gaps: { about: string; code: string; names: readonly string[] }[] = []
  const look = (answer: Answer<unknown> | null, about: string): void => {
    if (answer === null || !('notChecked' in answer) || answer.notChecked === 'not-in-network') return
    const names = [...answer.parts, ...answer.conductors]
    gaps.push({ about, code: answer.notChecked, names: names.length > 0 ? names : [about] })
  }
  for (const [id, run] of answers.runs) {
    if ('notChecked' in run.forward && run.forward.notChecked === 'not-in-network') continue
    for (const a of [run.forward, run.backward, run.from, run.to, run.verdict, run.sustained, run.ampacity])
      look(a, id)
  }
  for (const { part, worst } of answers.branches.values()) look(worst, part)
  for (const [part, worst] of answers.bars) look(worst, part)
  for (const { part, drop } of answers.drops.values()) look(drop, part)
  for (const { part, over, under } of answers.shunts.values()) for (const a of [over, under]) look(a, part)
  return gaps
}

describe('random designs', () => {
  it.each(['wild', 'sensible'] as const)(
    '%s: whatever is not checked is found, and answers cross to a worker',
    { timeout: 120_000 },
    (manner) => {
      for (let seed = 1; seed <= 60; seed++) {
        const random = new Random(seed)
        const d = randomDesign(random, random.whole(1, 50), manner)
        const analysed = analyse(d)
        expect(structuredClone(analysed)).toEqual(analysed)
        const telling = analysed.findings.filter((f) => f.level === 'not-checked' || TELLING.has(f.rule))
        const told = new Set(telling.flatMap((f) => [...f.parts, ...f.conductors]))
        const shorted = telling.some((f) => f.rule === 'J1')
        for (const { about, code, names } of gapsOf(d))
          if (!(code === 'terminals-joined' && shorted))
            expect(
              names.some((id) => told.has(id)),
              `seed ${seed}: ${code} of ${about}`,
            ).toBe(true)
      }
    },
  )

  it('written, read back and analysed without an error', { timeout: 120_000 }, () => {
    for (let seed = 101; seed <= 300; seed++) {
      const random = new Random(seed)
      const text = writeDesign(randomDesign(random, random.whole(1, 40), seed % 2 ? 'wild' : 'sensible'))
      const { design } = readDesign(text)
      expect(design, `seed ${seed}`).toBeDefined()
      expect(() => analyse(design!), `seed ${seed}`).not.toThrow()
    }
  })

  it('the same design gives the same answers, and keys of findings are unique', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const d = randomDesign(new Random(seed), 40, 'sensible')
      const { findings } = analyse(d)
      expect(analyse(d).findings).toEqual(findings)
      expect(new Set(findings.map((f) => f.key)).size, `seed ${seed}`).toBe(findings.length)
    }
  })

  it('a thousand conductors joined anyhow', { timeout: 120_000 }, () => {
    expect(analyse(randomDesign(new Random(1), 1000, 'wild')).answers.runs.size).toBe(1000)
  })
})
