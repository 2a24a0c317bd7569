import type { Limit } from '../../math/choice'
import { choose } from '../../math/choosing'
import type { ConductorId } from '../../model/design'
import type { DropCut } from './dropcuts'
import type { FreeRun } from './freeruns'
import { ampsOf, type Needs } from './needs'

export type Selected = ReadonlyMap<ConductorId, number>

export type LeastCopper =
  /** Option of each free conductor. */
  | { readonly pick: Selected }
  /** Conductors that no size carries. */
  | { readonly tooThin: readonly FreeRun[] }
  /** Worst cases that even the thickest sizes exceed. */
  | { readonly tooLong: readonly DropCut[] }

/**
 * The sizes of least copper that carry what they must and keep every drop. `floor`: option of each conductor below which
 * it may not be chosen, beside its needs. Sizes beyond what the lugs of its terminals take are chosen only where nothing else will do. `ohmsOf`: resistance of the conductors that are not free.
 */
export function leastCopper(
  free: readonly FreeRun[],
  needs: Needs,
  cuts: readonly DropCut[],
  floor: Selected,
  ohmsOf: (id: ConductorId) => number,
): LeastCopper {
  const lugged = solve(free, needs, cuts, floor, ohmsOf, true)
  return 'tooLong' in lugged ? solve(free, needs, cuts, floor, ohmsOf, false) : lugged
}

function solve(
  free: readonly FreeRun[],
  needs: Needs,
  cuts: readonly DropCut[],
  floor: Selected,
  ohmsOf: (id: ConductorId) => number,
  withLugs: boolean,
): LeastCopper {
  const first = free.map(({ conductor, options }) => {
    const amps = ampsOf(needs.get(conductor.id) ?? [])
    const carries = options.findIndex((o) => o.amps >= amps)
    return carries === -1 ? -1 : Math.max(carries, floor.get(conductor.id) ?? 0)
  })
  const tooThin = free.filter((_, i) => first[i] === -1)
  if (tooThin.length > 0) return { tooThin }
  const place = new Map(free.map(({ conductor }, i) => [conductor.id, i]))
  const limits: Limit[] = []
  const asked: DropCut[] = []
  for (const cut of cuts) {
    const limit = limitOf(cut, place, ohmsOf)
    if (limit.choices.length === 0) continue
    limits.push(limit)
    asked.push(cut)
  }
  const chosen = choose({
    choices: free.map(({ options, lugged }, i) => {
      const from = first[i]!
      const open = options.slice(from, withLugs && from < lugged ? lugged : options.length)
      return { cost: open.map((o) => o.kg), use: open.map((o) => o.ohms) }
    }),
    limits,
  })
  if ('impossible' in chosen) return { tooLong: chosen.impossible.map((l) => asked[l]!) }
  return { pick: new Map(free.map(({ conductor }, i) => [conductor.id, first[i]! + chosen.pick[i]!])) }
}

/** A current that runs against the drop counts as none: no size is chosen thinner for it. */
function limitOf(
  { amps, limitV }: DropCut,
  place: ReadonlyMap<ConductorId, number>,
  ohmsOf: (id: ConductorId) => number,
): Limit {
  let most = limitV
  const choices: number[] = []
  const factors: number[] = []
  for (const [id, a] of amps) {
    const choice = place.get(id)
    if (choice === undefined) most -= a * ohmsOf(id)
    else if (a > 0) {
      choices.push(choice)
      factors.push(a)
    }
  }
  return { most, choices, factors }
}
