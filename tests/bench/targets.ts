/**
 * Every target of speed that the project has set itself, in one run, each beside its figure with "met" or "missed":
 * `npm run bench -- targets`, or `tsx tests/bench/targets.ts`. Figures are the least of several runs, which is what other
 * work on the machine disturbs least; the median stands beside it. HiGHS and ngspice run in the same process or at once
 * after it, so that ratios hold on any machine. A run through tsx names every function anew and takes up to a third longer
 * than the built product.
 */
import { pathToFileURL } from 'node:url'
import { envelopes } from '../../engine/calc/envelope'
import { loadFlow } from '../../engine/calc/loadflow'
import { prepare } from '../../engine/calc/prepare'
import { protection } from '../../engine/calc/protection'
import { sizeIt } from '../../engine/calc/sizing/sizeit'
import type { Design } from '../../engine/model/design'
import { analyse, analyser } from '../../engine/rules/analyse'
import { loadSystem, systemDesign } from '../reference/loadsystem'
import { operatingCase } from '../reference/ngspice/cases'
import { hasNgspice, simulate } from '../reference/ngspice/deck'
import { vehicle } from '../reference/vehicle'
import { vetVan } from '../scenarios/demos/vetvan'
import { everyday } from './everyday'
import { programmed } from './programmed'

interface Timed {
  readonly least: number
  readonly median: number
}

function timed(runs: number, work: () => unknown): Timed {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now()
    work()
    return performance.now() - start
  }).sort((a, b) => a - b)
  return { least: times[0]!, median: times[Math.floor(runs / 2)]! }
}

const ms = ({ least, median }: Timed): string => `${least.toFixed(1)} ms (median ${median.toFixed(1)})`

const line = (what: string, figure: string, target: string, met: boolean): string =>
  `${met ? 'met   ' : 'MISSED'}  ${what}: ${figure}; target ${target}`

export function targetsBench(): string[] {
  return [...checks(), againstHighs(), ...large(), ...operatingPoint(), sizing(), ...growth()]
}

function checks(): string[] {
  const van = vetVan()
  for (let i = 0; i < 80; i++) analyse(van)
  const all = timed(101, () => analyse(van))
  const next = analyser()
  next(van)
  const moved = [van, { ...van, parts: van.parts.map((p) => ({ ...p, x: p.x + 5 })) }] as const
  let turn = 0
  const again = timed(101, () => next(structuredClone(moved[turn++ % 2]!)))
  const thousand = everyday(1000)
  const made = timed(9, () => analyse(thousand))
  return [
    line(`all checks, van of ${van.conductors.length} conductors`, ms(all), 'under 4 ms', all.least < 4),
    line('the same after parts were moved', ms(again), 'under 4 ms', again.least < 4),
    `        all checks, ${thousand.conductors.length} conductors: ${ms(made)}; no target`,
  ]
}

function againstHighs(): string {
  const form = vehicle(1, 1000)
  const ours = timed(15, () => envelopes(prepare(form)))
  const r = envelopes(prepare(form))
  const { ms: theirs, off } = programmed(form, r)
  const ratio = theirs / ours.median
  const figure = `${Math.round(ratio)} × faster than HiGHS, largest difference ${off.toExponential(1)}`
  return line('worst-case currents, 1,000 branches', figure, '100 ×, to 1e-6', ratio >= 100 && off < 1e-6)
}

/** Envelopes, and protection of every end with its cut named, of networks of growing size. */
function large(): string[] {
  const at = [1000, 5000, 20_000].map((size) => {
    const form = vehicle(1, size)
    const work = (): void => {
      const p = prepare(form)
      envelopes(p)
      const { end } = protection(p)
      form.branches.forEach((b, e) => {
        if (b.kind === 'conductor') for (const side of ['from', 'to'] as const) end(e, side)
      })
    }
    return { n: form.branches.length, time: timed(size > 5000 ? 15 : 41, work) }
  })
  const last = at[at.length - 1]!
  const figure = ms(last.time)
  return [
    line(`worst cases and protection, ${last.n} branches`, figure, 'under 1 s', last.time.least < 1000),
    ...grown('worst cases and protection', at),
  ]
}

function grown(what: string, at: readonly { readonly n: number; readonly time: Timed }[]): string[] {
  return at.slice(1).map(({ n, time }, i) => {
    const before = at[i]!
    const ratio = time.least / before.time.least
    const nLogN = (n * Math.log(n)) / (before.n * Math.log(before.n))
    const figure = `${ratio.toFixed(1)} × the time at ${before.n}`
    return line(
      `${what}, growth to ${n}`,
      figure,
      `n·log n, ${nLogN.toFixed(1)} ×, give or take a quarter`,
      ratio <= 1.25 * nLogN,
    )
  })
}

function operatingPoint(): string[] {
  if (!hasNgspice()) return ['        operating point: not measured, ngspice is not installed']
  return [150, 1000].map((ways) => {
    const c = operatingCase(7, ways)
    const operations = new Map(c.operations)
    const p = prepare(c.form)
    const answer = loadFlow(p, operations)
    if ('reason' in answer) throw new Error(answer.reason)
    const zero = new Map(c.grounds.map((id) => [answer.group[p.nodeIndex.get(id)!]!, p.nodeIndex.get(id)!]))
    const off = simulate(c).map((v, i) =>
      Math.abs(answer.voltage[i]! - answer.voltage[zero.get(answer.group[i]!)!]! - v),
    )
    const ours = timed(41, () => loadFlow(prepare(c.form), operations))
    const theirs = timed(7, () => simulate(c))
    const ratio = theirs.least / ours.least
    const worst = Math.max(...off)
    const figure = `${ratio.toFixed(1)} × faster than ngspice's batch run, largest difference ${worst.toExponential(1)} V`
    return line(
      `operating point, ${c.form.branches.length} branches`,
      figure,
      '10 ×, to 1e-6 V',
      ratio >= 10 && worst < 1e-6,
    )
  })
}

function sizing(): string {
  const design = systemDesign(
    loadSystem(1, { loads: 70, blocks: 3, backs: 3, nested: true, reachM: 8, totalA: 150 }),
  )
  const time = timed(15, () => sizeIt(design, 'all'))
  return line(`sizing, ${design.conductors.length} conductors`, ms(time), 'under 100 ms', time.least < 100)
}

function growth(): string[] {
  const at = [1000, 5000, 20_000].map((size) => {
    const design: Design = everyday(size)
    return { n: design.conductors.length, time: timed(size > 1000 ? 1 : 3, () => analyse(design)) }
  })
  return [
    ...at.map(({ n, time }) => `        all checks, ${n} conductors: ${ms(time)}; no target`),
    ...grown('all checks', at),
  ]
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(targetsBench().join('\n'))
