/**
 * Protection of every conductor end and the sustained current of every return in designs of everyday shape, in
 * one run: `tsx tests/bench/protection.ts`. Against HiGHS on the same network of about 1,000 branches (every tenth
 * end and return, the time multiplied by ten); and how the time grows from 150 to 20,000 branches.
 */
import { pathToFileURL } from 'node:url'
import { type Prepared, prepare } from '../../engine/calc/prepare'
import { protection } from '../../engine/calc/protection'
import { returns } from '../../engine/calc/returns'
import { blocksOf } from '../../engine/math/blocks'
import { endFlowByLp, sustainedByLp } from '../reference/flowprograms'
import { vehicle } from '../reference/vehicle'
import { medianMs } from './median'

const SIZES = [150, 1000, 5000, 20_000]
const RUNS = 9
const SAMPLE = 10

export function protectionBench(): string[] {
  return [endsAgainstHighs(), returnsAgainstHighs(), ...growth()]
}

function allReturns(p: Prepared): number[] {
  const result = returns(p)
  const figures: number[] = []
  result.isReturn.forEach((is, e) => {
    if (is === 0) return
    const answer = result.sustained(e)
    if ('notChecked' in answer) throw new Error(answer.notChecked.code)
    figures.push(answer.sustained === 'unlimited' ? Number.POSITIVE_INFINITY : answer.sustained)
  })
  return figures
}

function allNamed(p: Prepared): void {
  const result = protection(p)
  p.form.branches.forEach((b, e) => {
    if (b.kind !== 'conductor') return
    result.end(e, 'from')
    result.end(e, 'to')
  })
}

function difference(ours: number, theirs: number): number {
  return ours === theirs ? 0 : Math.abs(ours - theirs) / Math.max(1, Math.abs(theirs))
}

function endsAgainstHighs(): string {
  const form = vehicle(1, 1000)
  const ours = medianMs(RUNS, () => protection(prepare(form)))
  const { intoFrom, intoTo } = protection(prepare(form))
  const conductors = form.branches.flatMap((b, e) => (b.kind === 'conductor' ? [e] : []))
  const sampled = conductors.filter((_, i) => i % SAMPLE === 0)
  let off = 0
  const start = performance.now()
  for (const e of sampled) {
    off = Math.max(off, difference(intoFrom[e]!, endFlowByLp(form, e, 'from')))
    off = Math.max(off, difference(intoTo[e]!, endFlowByLp(form, e, 'to')))
  }
  const theirs = ((performance.now() - start) * conductors.length) / sampled.length
  return line(
    `protection, ${2 * conductors.length} ends of ${form.branches.length} branches`,
    ours,
    theirs,
    off,
  )
}

function returnsAgainstHighs(): string {
  const form = vehicle(1, 1000)
  const p = prepare(form)
  const ours = medianMs(RUNS, () => allReturns(prepare(form)))
  const figures = allReturns(p)
  const { isReturn } = returns(p)
  const { of } = blocksOf(p.graph)
  const all = form.branches.flatMap((_, e) => (isReturn[e] === 1 ? [e] : []))
  const sampled = all.map((e, i) => ({ e, i })).filter(({ i }) => i % SAMPLE === 0)
  const start = performance.now()
  const resistive = sustainedByLp(
    form,
    sampled.map(({ e }) => e),
    true,
  )
  const theirs = ((performance.now() - start) * all.length) / sampled.length
  // Fuses in meshes count in full for bridges, so those are compared with the flow; see the tests.
  const flows = sustainedByLp(
    form,
    sampled.map(({ e }) => e),
    false,
  )
  const off = sampled.map(({ e, i }, k) => difference(figures[i]!, of[e]! >= 0 ? resistive[k]! : flows[k]!))
  const what = `sustained current, ${all.length} returns of ${form.branches.length} branches`
  return line(what, ours, theirs, Math.max(...off))
}

function line(what: string, ours: number, theirs: number, off: number): string {
  return [
    `${what}: ${Math.round(theirs / ours)} × faster than HiGHS`,
    `(${ours.toFixed(2)} ms against ${theirs.toFixed(0)} ms; largest difference ${off.toExponential(1)})`,
  ].join(' ')
}

function growth(): string[] {
  return SIZES.flatMap((size) => {
    const form = vehicle(1, size)
    const p = prepare(form)
    const runs = size > 5000 ? 3 : RUNS
    const branches = form.branches.length
    return [
      `protection, ${branches} branches: ${medianMs(runs, () => protection(p)).toFixed(2)} ms`,
      `  with every cut named: ${medianMs(runs, () => allNamed(p)).toFixed(2)} ms`,
      `  sustained current of every return: ${medianMs(runs, () => allReturns(p)).toFixed(2)} ms`,
    ]
  })
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(protectionBench().join('\n'))
