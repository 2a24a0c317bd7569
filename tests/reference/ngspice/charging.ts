import type { NetworkDevice } from '../../../engine/calc/form'
import { CHARGE_STAGES, standingAt, upTo } from '../../../engine/calc/operating/charging'
import type { Operation } from '../../../engine/calc/operation'
import { Random } from '../random'
import { operatingCase } from './cases'
import type { Case } from './deck'

/** Of these the simulator itself comes to rest; on about one in six it stops on a bend, and there is nothing to compare. */
export const CHARGING_SEEDS = [402, 403, 404, 405, 407, 408, 409, 412] as const

/**
 * An operating case whose chargers work in a stage, the same for all by the seed: its charger between the batteries, one on
 * mains and one that passes on a power, each holding a voltage of its own. In absorption and float the batteries of the
 * bank stand at the greatest of these.
 */
export function chargingCase(seed: number, ways: number): Case {
  const random = new Random(seed)
  const c = operatingCase(seed, ways)
  const stage = CHARGE_STAGES[seed % CHARGE_STAGES.length]!
  const times = c.form.devices.some((d) => d.id === 'low0') ? 2 : 1
  const heldV = (): number =>
    times * (stage === 'float' ? random.between(13.5, 13.8) : random.between(14.2, 14.6))
  const devices: NetworkDevice[] = [
    ...c.form.devices,
    ...['mains', 'power'].map((id) => ({
      id,
      positive: `${id}+`,
      negative: `${id}-`,
      min: 0,
      max: 200,
      sustainedFault: 0,
    })),
  ]
  const leads = ['mains', 'power'].flatMap((id) =>
    ['+', '-'].map((pole) => ({
      id: `${id}${pole}lead`,
      from: `${id}${pole}`,
      to: `bar${pole}`,
      resistance: random.between(1e-3, 2e-2),
      kind: 'conductor' as const,
    })),
  )
  const held = [heldV(), heldV(), heldV()] as const
  const charger = c.operations.find(([id]) => id === 'charger/out')![1]
  const gives = 'watts' in charger ? { watts: charger.watts } : { amps: (charger as { amps: number }).amps }
  const { input, efficiency } = charger
  const operations = new Map<string, Operation>([
    ...c.operations,
    ['charger/out', { stretches: upTo(held[0], gives), input: input!, efficiency: efficiency! }],
    ['mains', { stretches: upTo(held[1], { amps: random.between(5, 120) }) }],
    ['power', { stretches: upTo(held[2], { watts: random.between(100, 900) }) }],
  ])
  if (stage !== 'bulk')
    for (const d of c.form.devices.filter((x) => /^(bank|low)\d/.test(x.id))) {
      const stretches = standingAt(Math.max(...held) / times, d.emf!, d.internalResistance!)
      operations.set(d.id, { stretches })
    }
  return {
    name: `charging, ${stage}, seed ${seed}, ${ways} ways`,
    form: {
      nodes: [...c.form.nodes, ...['mains', 'power'].flatMap((id) => [`${id}+`, `${id}-`])],
      branches: [...c.form.branches, ...leads],
      devices,
    },
    operations: [...operations],
    grounds: c.grounds,
  }
}
