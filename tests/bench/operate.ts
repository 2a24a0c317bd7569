/**
 * Operating point of whole designs, in one run: `tsx tests/bench/operate.ts`. Prints the median of one call on a design
 * that was seen before, as a change of a switch costs it, and as a ratio to one bare load flow of the same network.
 */
import { pathToFileURL } from 'node:url'
import { loadFlow } from '../../engine/calc/loadflow'
import { networkOf } from '../../engine/calc/network'
import { operate } from '../../engine/calc/operate'
import { usualState } from '../../engine/calc/operating/usual'
import type { Operation } from '../../engine/calc/operation'
import { prepare } from '../../engine/calc/prepare'
import { DEMOS } from '../scenarios/demos/all'
import { medianMs } from './median'

const RUNS = 101

export function operateBench(): string[] {
  return DEMOS.map(({ title, make }) => {
    const d = make()
    const usual = usualState(d)
    const sunny = { ...usual, sources: new Map([...usual.sources.keys()].map((id) => [id, 1])) }
    const { form } = networkOf(d, 'none', new Set())
    const stores = form.devices.filter((x) => x.emf !== undefined)
    const rest = form.devices.filter((x) => x.emf === undefined)
    const operations = new Map<string, Operation>([
      ...stores.map((x) => [x.id, { volts: x.emf!, ohms: 0.005 }] as const),
      ...rest.map((x) => [x.id, { amps: 0 }] as const),
    ])
    const bare = medianMs(RUNS, () => loadFlow(prepare(form), operations))
    const still = medianMs(RUNS, () => operate(d, usual))
    const all = medianMs(RUNS, () => operate(d, sunny))
    return [
      `operating point, ${title}: ${still.toFixed(2)} ms, with every source on ${all.toFixed(2)} ms`,
      `(${(still / bare).toFixed(1)} and ${(all / bare).toFixed(1)} × one load flow without loads)`,
    ].join(' ')
  })
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(operateBench().join('\n'))
