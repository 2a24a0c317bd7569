import type { ConductorId, Design } from '../../model/design'
import type { RuleSet } from '../../tables/rulesets'
import type { Ohms } from '../../units'
import type { RunAnswer } from '../answers'
import { polesOf } from '../network'
import { runsOf } from '../runs'
import type { States } from '../states'
import { arrayAmps } from './arrayamps'
import { letThroughBehind } from './behind'
import { type DropCut, dropCuts, meshless } from './dropcuts'
import type { FreeRun } from './freeruns'
import { leastCopper, type Selected } from './leastcopper'
import { ampsOf, type Need, type Needs, needsOf } from './needs'
import { tooLong, tooThin } from './nosize'
import { warmOhms } from './runoptions'
import type { Kept, NoSize } from './sizing'

export interface SizingCase {
  /** With the sizes and ratings that are tried. */
  readonly design: Design
  readonly ruleSet: RuleSet
  readonly laid: States
  readonly free: readonly FreeRun[]
  /** Worst cases of drops known so far. */
  readonly cuts: readonly DropCut[]
  /** Options below which nothing may be chosen. */
  readonly floor: Selected
  /** Devices of which the drop is not kept, as `part/device`. */
  readonly unkept: ReadonlySet<string>
  /** The choice that led to this trial. */
  readonly before: SizedRuns | null
}

export interface SizedRuns {
  readonly sizes: ReadonlyMap<ConductorId, string>
  readonly pick: Selected
  readonly needs: Needs
  readonly cuts: readonly DropCut[]
  readonly ohmsOf: (id: ConductorId) => Ohms
}

export interface NoSizes {
  readonly infeasible: readonly NoSize[]
  /** What conductors must carry and no size does. */
  readonly tooThin: readonly Need[]
}

/** Choices are made on the worst cases known; each that a choice then breaks is added, until none is. */
const MOST_CHOICES = 60

/** The conductors of least copper at the currents of one trial, or why there are none. */
export function sizeRuns(c: SizingCase): SizedRuns | { readonly unsized: readonly Kept[] } | NoSizes {
  const { design, ruleSet, laid, free, floor } = c
  if (c.before && !hasMesh(laid)) return c.before
  const { needs, unsized } = allNeeds(c)
  if (unsized.length > 0) return { unsized }
  if (c.before && stands(c.before, needs)) return c.before
  const ohmsOf = (id: ConductorId): Ohms => {
    const run = laid.border.conductors.get(id)
    return warmOhms(design, ruleSet, run?.size ?? null, run?.lengthM ?? null)
  }
  const cuts = [...c.cuts]
  const isFree = new Set(free.map(({ conductor }) => conductor.id))
  for (let choice = 1; ; choice++) {
    const least = leastCopper(free, needs, cuts, floor, ohmsOf)
    if ('tooThin' in least) {
      const beyond = least.tooThin.flatMap(({ conductor, options }) =>
        needs.get(conductor.id)!.filter((need) => need.amps > options.at(-1)!.amps),
      )
      return { infeasible: tooThin(least.tooThin, needs), tooThin: beyond }
    }
    if ('tooLong' in least) return { infeasible: tooLong(least.tooLong, free, design, ohmsOf), tooThin: [] }
    const { pick } = least
    const sizes = new Map(
      free.map(({ conductor, options }) => [conductor.id, options[pick.get(conductor.id)!]!.size.key]),
    )
    const broken = dropCuts(design, ruleSet, laid.states, sizes).filter(
      ({ cut, volts }) =>
        !c.unkept.has(cut.id) &&
        volts > cut.limitV * (1 + 1e-9) &&
        [...cut.amps.keys()].some((id) => isFree.has(id)),
    )
    if (broken.length === 0 || choice === MOST_CHOICES) return { sizes, pick, needs, cuts, ohmsOf }
    for (const { cut } of broken) cuts.push(cut)
  }
}

/** In a tree no current hangs on a size: what was chosen stands. */
const hasMesh = ({ states }: States): boolean =>
  states.some(({ any }) => any.envelope.block.some((block) => block >= 0))

/** Outside meshes drops hang on sizes alone: what was chosen for the same needs is chosen again. */
const stands = ({ needs: before, cuts }: SizedRuns, needs: Needs): boolean =>
  cuts.every(meshless) &&
  needs.size === before.size &&
  [...needs].every(([id, of]) => ampsOf(of) === ampsOf(before.get(id) ?? []))

function allNeeds({ design, ruleSet, laid, free }: SizingCase) {
  const { border, states } = laid
  const runs = runsOf({ design, ruleSet, border, states, shunts: new Map(), poles: polesOf(design) })
  const needs = new Map<ConductorId, readonly Need[]>()
  const unsized: Kept[] = []
  for (const { conductor, options } of free) {
    const run = runs.get(conductor.id)!
    const reached = 'value' in run.from && run.from.value.amps === 'unlimited' ? 'from' : 'to'
    const behind = letThroughBehind(states[0]!.any, conductor.id, reached)
    const most = options.at(-1)!.amps * ruleSet.deviceShare.value
    const found = needsOf(
      ruleSet,
      run,
      arrayAmps(design, run),
      behind.amps <= most ? behind : { amps: 0, guards: [] },
    )
    if ('notChecked' in found) unsized.push({ conductor: conductor.id, because: found })
    else if (found.length === 0 && isUnlimited(run))
      unsized.push({ conductor: conductor.id, because: { key: 'no-limit' } })
    else needs.set(conductor.id, found)
  }
  return { needs, unsized }
}

/** May a fault bring in what nothing limits? Then "no current in use" says nothing of its size. */
const isUnlimited = ({ from, to }: RunAnswer): boolean =>
  [from, to].some((end) => 'value' in end && end.value.amps === 'unlimited')
