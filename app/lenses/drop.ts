import {
  type Answers,
  type ConductorId,
  type DropAnswer,
  figure,
  type PartId,
  type RunAnswer,
} from '../../engine'
import { ASIDE, type Look, look, NOT_CHECKED, type Painted, plain } from './look'

/** Up to which share of the voltage, %, a line has which width. */
const STEPS: readonly (readonly [number, Look])[] = [
  [0.2, look('up to 0.2 %', 0.35)],
  [0.5, look('up to 0.5 %', 0.7)],
  [1, look('up to 1 %', 1.1)],
  [2, look('up to 2 %', 1.6)],
  [Infinity, look('more than 2 %', 2.2)],
]
const NO_LOAD = look('Feeds no load', 0.35, { dash: [1.4, 1.4] })

export const DROP_LOOKS: readonly Look[] = [...STEPS.map(([, of]) => of), NO_LOAD, NOT_CHECKED]

/** What each conductor takes of the voltage for each load that it feeds, %. */
type Shares = ReadonlyMap<ConductorId, ReadonlyMap<string, number>>

const known = new WeakMap<Answers['drops'], Shares>()

function sharesOf(drops: Answers['drops']): Shares {
  const before = known.get(drops)
  if (before) return before
  const shares = new Map<ConductorId, Map<string, number>>()
  for (const [load, { drop }] of drops) {
    if (!('value' in drop)) continue
    const { conductorsV, percent, conductors } = drop.value
    for (const { conductor, volts } of conductors) {
      const of = shares.get(conductor) ?? new Map<string, number>()
      of.set(load, conductorsV > 0 ? (volts / conductorsV) * percent : 0)
      shares.set(conductor, of)
    }
  }
  known.set(drops, shares)
  return shares
}

/** The share that conductors take together at the load where they take most, %; null: no load hangs on them. */
export function dropShare(drops: Answers['drops'], ids: readonly ConductorId[]): number | null {
  const sums = new Map<string, number>()
  for (const id of ids)
    for (const [load, percent] of sharesOf(drops).get(id) ?? [])
      sums.set(load, (sums.get(load) ?? 0) + percent)
  return sums.size === 0 ? null : Math.max(...sums.values())
}

/** Share of the drop on a line, which may stand for a feed and its return. */
export function dropOf(
  drops: Answers['drops'],
  ids: readonly ConductorId[],
  runs: readonly RunAnswer[],
): Painted {
  const share = dropShare(drops, ids)
  if (share !== null) {
    const [, of] = STEPS.find(([upTo]) => share <= upTo)!
    return { look: of, figure: figure(share, '%'), rank: share }
  }
  if (!runs.some(({ design: d }) => 'value' in d || d.notChecked !== 'not-in-network')) return plain(ASIDE)
  const everyLoad = [...drops.values()].every(({ drop }) => 'value' in drop)
  return plain(everyLoad ? NO_LOAD : NOT_CHECKED)
}

export interface LoadFigure {
  readonly text: string
  /** Above what the rule set allows. */
  readonly over: boolean
  readonly percent: number
}

/** What stands at a load: its drop, and the limit where it is passed. The worst of its devices counts. */
export function loadFigures(drops: Answers['drops']): ReadonlyMap<PartId, LoadFigure> {
  const figures = new Map<PartId, LoadFigure>()
  for (const answer of drops.values()) {
    const next = loadFigure(answer)
    const before = figures.get(answer.part)
    if (!before || next.percent > before.percent) figures.set(answer.part, next)
  }
  return figures
}

function loadFigure({ drop, limitPercent }: DropAnswer): LoadFigure {
  if (!('value' in drop)) return { text: 'drop ?', over: false, percent: 0 }
  const { percent } = drop.value
  const over = percent > limitPercent
  const text = over ? `${figure(percent, '%')} > ${figure(limitPercent, '%')}` : figure(percent, '%')
  return { text, over, percent }
}
