/**
 * Time of a whole analysis, from a design to its answers and findings, warm, median of many runs, and of its stages:
 * `tsx tests/bench/analyse.ts`. The veterinary van, and made-up designs of 150, 1,000 and 5,000 conductors of
 * everyday shape.
 */
import { pathToFileURL } from 'node:url'
import { answersOf } from '../../engine/calc/answersof'
import { statesOf } from '../../engine/calc/states'
import type { Design } from '../../engine/model/design'
import { analyse } from '../../engine/rules/analyse'
import { vetVan } from '../scenarios/demos/vetvan'
import { everyday } from './everyday'
import { medianMs } from './median'

const SIZES = [
  { conductors: 150, runs: 41 },
  { conductors: 1000, runs: 5 },
  { conductors: 5000, runs: 1 },
]

export function analyseBench(): string[] {
  const van = vetVan()
  for (let i = 0; i < 60; i++) analyse(van)
  const lines = [timed('veterinary van', van, 101).line]
  let before: { conductors: number; ms: number } | undefined
  for (const { conductors, runs } of SIZES) {
    const { line, ms } = timed('made-up design', everyday(conductors), runs)
    const times = before
      ? `; ${(ms / before.ms).toFixed(1)} × the last, of ${(conductors / before.conductors).toFixed(1)} ×`
      : ''
    lines.push(`${line}${times}`)
    before = { conductors, ms }
  }
  return lines
}

function timed(name: string, design: Design, runs: number): { line: string; ms: number } {
  const laid = medianMs(runs, () => statesOf(design))
  const answered = medianMs(runs, () => answersOf(design))
  const ms = medianMs(runs, () => analyse(design))
  const stages = `network ${laid.toFixed(1)}, answers ${(answered - laid).toFixed(1)}, rules ${(ms - answered).toFixed(1)}`
  return {
    line: `analysis, ${name}, ${design.conductors.length} conductors: ${ms.toFixed(1)} ms (${stages})`,
    ms,
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(analyseBench().join('\n'))
