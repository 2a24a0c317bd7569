import type { ConductorId, Design, PartId } from '../../model/design'
import type { RuleSet } from '../../tables/rulesets'
import type { Ohms, Volts } from '../../units'
import type { DropAnswer } from '../answers'
import { dropsOf } from '../drops'
import type { Solved, State } from '../solved'
import { warmOhms } from './runoptions'

export type SizeOf = ReadonlyMap<ConductorId, string>

/** One worst case of one load: what its conductors take, by their resistance. */
export interface DropCut {
  readonly id: string
  readonly part: PartId
  readonly device: string
  readonly limitPercent: number
  /** What is allowed, and 1 % of the voltage. */
  readonly limitV: Volts
  readonly onePercentV: Volts
  /** Amps of each conductor on the way: volts for an ohm. */
  readonly amps: ReadonlyMap<ConductorId, number>
  /** The way crosses a meshed part: the amps hang on the sizes. */
  readonly meshed: boolean
}

/** Drops of all loads with conductors of other sizes, by load: worst cases that bring them about, and the conductors' share, V. */
export function dropCuts(
  design: Design,
  ruleSet: RuleSet,
  states: readonly State[],
  sizes: SizeOf,
): { readonly cut: DropCut; readonly volts: Volts }[] {
  const at = states.map((state): State => {
    const any = resized(state.any, sizes)
    return { ...state, any, none: state.none === state.any ? any : resized(state.none, sizes) }
  })
  const { conductors } = at[0]!.any.border
  const ohmsOf = (id: ConductorId): Ohms => {
    const c = conductors.get(id)!
    return warmOhms(design, ruleSet, c.size, c.lengthM)
  }
  return [...dropsOf(design, ruleSet, at)].flatMap(([id, answer]) => {
    const cut = cutOf(id, answer, ohmsOf, states[0]!.any)
    return cut && 'value' in answer.drop ? [{ cut, volts: answer.drop.value.conductorsV }] : []
  })
}

export const meshless = (cut: DropCut): boolean => !cut.meshed

function resized(s: Solved, sizes: SizeOf): Solved {
  const conductors = new Map(
    [...s.border.conductors].map(([id, c]) => [id, { ...c, size: sizes.get(id) ?? c.size }]),
  )
  return { ...s, border: { ...s.border, conductors } }
}

function cutOf(
  id: string,
  { part, device, limitPercent, drop }: DropAnswer,
  ohmsOf: (id: ConductorId) => Ohms,
  { p, envelope }: Solved,
): DropCut | null {
  if (!('value' in drop) || !(drop.value.percent > 0)) return null
  const { conductorsV, percent, conductors } = drop.value
  const onePercentV = conductorsV / percent
  const amps = new Map<ConductorId, number>()
  for (const { conductor, volts } of conductors)
    amps.set(conductor, (amps.get(conductor) ?? 0) + volts / ohmsOf(conductor))
  const meshed = conductors.some(({ conductor }) => envelope.block[p.branchIndex.get(conductor)!]! >= 0)
  return { id, part, device, limitPercent, limitV: limitPercent * onePercentV, onePercentV, amps, meshed }
}
