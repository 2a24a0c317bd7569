/**
 * All worst-case currents of designs of everyday shape, in one run: `tsx tests/bench/envelope.ts`. Against HiGHS
 * on the plain program of the same network of about 1,000 branches, two programs a branch from one kept basis;
 * and how the time grows from 150 to 20,000 branches.
 */
import { pathToFileURL } from 'node:url'
import { envelopes } from '../../engine/calc/envelope'
import { prepare } from '../../engine/calc/prepare'
import { vehicle } from '../reference/vehicle'
import { medianMs } from './median'
import { programmed } from './programmed'

const SIZES = [150, 1000, 5000, 20_000]
const RUNS = 15

export function envelopeBench(): string[] {
  return [againstHighs(), ...growth()]
}

function againstHighs(): string {
  const form = vehicle(1, 1000)
  const ours = medianMs(RUNS, () => envelopes(prepare(form)))
  const r = envelopes(prepare(form))
  const { ms: theirs, off } = programmed(form, r)
  return [
    `worst-case currents, ${form.branches.length} branches: ${Math.round(theirs / ours)} × faster than HiGHS`,
    `(${ours.toFixed(2)} ms against ${theirs.toFixed(0)} ms; largest difference ${off.toExponential(1)})`,
  ].join(' ')
}

function growth(): string[] {
  const lines: string[] = []
  let before: { branches: number; ms: number } | undefined
  for (const size of SIZES) {
    const form = vehicle(1, size)
    const p = prepare(form)
    const r = envelopes(p)
    const branches = form.branches.length
    const sizes = r.blocks.start.subarray(1).map((end, block) => end - r.blocks.start[block]!)
    const meshes = `${r.blocks.edge.length} in meshes, ${Math.max(0, ...sizes)} in the largest`
    const ms = medianMs(RUNS, () => envelopes(p))
    const nLogN = before
      ? (branches * Math.log(branches)) / (before.branches * Math.log(before.branches))
      : undefined
    const grown =
      before && nLogN ? `; ${(ms / before.ms).toFixed(1)} × the last, n·log n ${nLogN.toFixed(1)} ×` : ''
    lines.push(`worst-case currents, ${branches} branches (${meshes}): ${ms.toFixed(2)} ms${grown}`)
    before = { branches, ms }
  }
  return lines
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(envelopeBench().join('\n'))
