import type { Ohms } from '../../units'
import type { NetworkBranch } from '../form'
import { prepare } from '../prepare'
import { potentials } from '../transfer'
import { nodeOf } from './probes'
import type { Rig } from './rig'
import type { Probe } from './step'

/**
 * Resistance between two places through the branches that a test keeps, devices taken off; undefined where they are
 * apart. O(network).
 */
export function ohmsBetween(
  rig: Rig,
  keep: (branch: NetworkBranch) => boolean,
): (from: Probe, to: Probe) => Ohms | undefined {
  const { form } = rig.plan.all
  const p = prepare({ ...form, devices: [], branches: form.branches.filter(keep) })
  const { of } = potentials(p)
  return (from, to) => {
    const [a, b] = [nodeOf(rig, from), nodeOf(rig, to)]
    if (a === -1 || b === -1 || p.net[a] !== p.net[b]) return undefined
    if (a === b) return 0
    const amps = new Float64Array(p.graph.vertexCount)
    amps[a] = 1
    amps[b] = -1
    const at = of(amps)
    return at[a]! - at[b]!
  }
}
