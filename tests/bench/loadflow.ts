/**
 * Operating point against a general circuit simulator's batch run on the same network, in one run, as a ratio:
 * `tsx tests/bench/loadflow.ts`. The simulator's time is that of the whole batch command, ours that of preparing
 * the form and solving it. Says so where the simulator is not installed.
 */
import { pathToFileURL } from 'node:url'
import { loadFlow } from '../../engine/calc/loadflow'
import { prepare } from '../../engine/calc/prepare'
import { operatingCase } from '../reference/ngspice/cases'
import { hasNgspice, simulate } from '../reference/ngspice/deck'

const WAYS = [30, 150, 1000]
const RUNS = 41

export function loadFlowBench(): string[] {
  if (!hasNgspice()) return ['operating point: not measured, ngspice is not installed']
  return WAYS.map((ways) => {
    const c = operatingCase(7, ways)
    const operations = new Map(c.operations)
    const p = prepare(c.form)
    const answer = loadFlow(p, operations)
    if ('reason' in answer) throw new Error(answer.reason)
    const zero = new Map(c.grounds.map((id) => [answer.group[p.nodeIndex.get(id)!]!, p.nodeIndex.get(id)!]))
    const volts = simulate(c)
    const off = volts.map((v, i) =>
      Math.abs(answer.voltage[i]! - answer.voltage[zero.get(answer.group[i]!)!]! - v),
    )
    const ours = median(() => loadFlow(prepare(c.form), operations))
    const theirs = median(() => simulate(c), 7)
    return [
      `operating point, ${c.form.branches.length} branches: ${(theirs / ours).toFixed(1)} × faster than the simulator's batch run`,
      `(${ours.toFixed(2)} ms against ${theirs.toFixed(1)} ms; largest difference ${Math.max(...off).toExponential(1)} V)`,
    ].join(' ')
  })
}

function median(work: () => unknown, runs = RUNS): number {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now()
    work()
    return performance.now() - start
  })
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)]!
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(loadFlowBench().join('\n'))
