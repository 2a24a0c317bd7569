import { electricalIn } from '../edit/terminal'
import { kindOf } from '../kinds/all'
import type { Design, Part, PartId } from '../model/design'
import type { Value } from '../model/fields'
import type { PartBranch } from '../model/kind'
import { partById } from '../model/lookup'
import { complete } from '../model/values'
import { type FuseBand, fuseBand, type OwnPoint } from '../tables/fuseband'
import type { Amps, Volts } from '../units'
import { type Border, contextOf } from './network'

/** What is typed of one fuse or breaker, or of the fuses of one block. null: not stated. */
export interface FuseFacts {
  readonly part: PartId
  /** Which way of a block. */
  readonly key: string
  /** "way 3 (pump)"; empty where the part is one fuse. */
  readonly name: string
  readonly ratingA: Amps | null
  readonly class: string
  readonly voltageV: Volts | null
  readonly breakingA: Amps | null
  /** Direct voltage up to which that breaking capacity is stated. */
  readonly breakingV: Volts | null
  readonly fullDuty: boolean
  /** null: no published limits of its class, and no point of its own; or no rating. */
  readonly band: FuseBand | null
}

const remembered = new WeakMap<Border, { design: Design; facts: ReadonlyMap<string, FuseFacts> }>()

/** Facts of every fuse, breaker and way of a design, by branch id; worked out once for each border. */
export function fuseFacts(design: Design, border: Border): ReadonlyMap<string, FuseFacts> {
  const known = remembered.get(border)
  if (known?.design === design) return known.facts
  const facts = new Map<string, FuseFacts>()
  remembered.set(border, { design, facts })
  for (const [id, { part, branch }] of border.branches)
    if (branch.kind === 'fuse') facts.set(id, factsOf(design, part, branch))
  return facts
}

/** Facts of one fuse or way; undefined where there is none. */
export function fuseFactsOf(design: Design, part: PartId, key: string): FuseFacts | undefined {
  const model = partById(design, part) && electricalIn(partById(design, part)!, contextOf(design))
  const branch = model?.branches.find((b) => b.kind === 'fuse' && b.key === key)
  return branch && factsOf(design, part, branch)
}

const ofBranch = new WeakMap<PartBranch, { part: Part | undefined; facts: FuseFacts }>()

/** Remembered weakly while the part stays as it is. */
function factsOf(design: Design, id: PartId, branch: PartBranch): FuseFacts {
  const part = partById(design, id)
  const known = ofBranch.get(branch)
  if (known && known.part === part) return known.facts
  const facts = readFacts(design, id, branch)
  ofBranch.set(branch, { part, facts })
  return facts
}

function readFacts(design: Design, part: PartId, branch: PartBranch): FuseFacts {
  const of = valuesOf(design, part)
  const breakingKA = numeric(of('breakingKA'))
  const fuseClass = String(of('class') ?? '')
  const point = (name: 'holds' | 'clears'): OwnPoint | null => {
    const [times, seconds] = [numeric(of(`${name}Times`)), numeric(of(`${name}S`))]
    return times !== null && seconds !== null && seconds > 0 ? { times, seconds } : null
  }
  const own = { holds: point('holds'), clears: point('clears') }
  return {
    part,
    key: branch.key,
    name: branch.name ?? '',
    ratingA: branch.ratingA,
    class: fuseClass,
    voltageV: numeric(of('voltageV')),
    breakingA: breakingKA === null ? null : breakingKA * 1000,
    breakingV: numeric(of('breakingV')),
    fullDuty: of('fullDuty') === true,
    band: branch.ratingA === null ? null : fuseBand(fuseClass, branch.ratingA, own),
  }
}

/** The values typed on a part's card, with initial ones where nothing is typed. */
export function valuesOf(design: Design, id: PartId): (field: string) => Value | undefined {
  const part = partById(design, id)
  const kind = part && kindOf(part.kind)
  const values = kind ? complete(kind.fields, part.values) : {}
  return (field) => values[field]
}

const numeric = (value: Value | undefined): number | null => (typeof value === 'number' ? value : null)
