import { blocksOf } from '../math/blocks'
import type { Border, OpenContacts } from './network'
import type { Prepared } from './prepare'

/** Positions that are tried: as many as keep positions × branches below this, and no more than so many. */
const MOST_WORK = 10_000
const MOST_POSITIONS = 64

/** Contacts to open; `opened`: beyond those of position `from`, they are make contacts of one meshed part. */
export interface Position {
  readonly open: OpenContacts
  readonly opened: { readonly from: number; readonly block: number } | null
}

export interface Positions {
  /** The first has every make contact closed. */
  readonly positions: readonly Position[]
  /** Contacts of which not every combination is tried; empty as a rule. */
  readonly untried: ReadonlySet<string>
}

/**
 * The positions of contacts that can make a difference: each throw of a changeover, and in each meshed part the
 * contacts whose opening moves current to the others. In a tree every contact closed is the worst case, and meshed
 * parts are tried one by one with all others closed, which lets the most through to them.
 * `all` is the border with every contact closed, `lay` gives the network with some open.
 */
export function positionsOf(all: Border, lay: (open: OpenContacts) => Prepared): Positions {
  const most = Math.min(MOST_POSITIONS, Math.max(1, Math.floor(MOST_WORK / (all.form.branches.length + 1))))
  const untried = new Set<string>()
  const thrown = throwsTried(throwsOf(all), most, untried).map((ids) => new Set(ids))
  const positions: Position[] = thrown.map((open) => ({ open, opened: null }))
  thrown.forEach((start, from) => {
    for (const [block, contacts] of meshedContacts(all, lay(start))) {
      const room = most - positions.length
      const sets = contacts.length < 16 && 2 ** contacts.length - 1 <= room ? subsets(contacts) : null
      if (!sets) for (const id of contacts) untried.add(id)
      for (const ids of sets ?? contacts.map((id) => [id]).slice(0, Math.max(0, room)))
        positions.push({ open: new Set([...start, ...ids]), opened: { from, block } })
    }
  })
  return { positions, untried }
}

/** For each changeover and each of its positions, the contacts that are open then. */
type Throws = readonly (readonly (readonly string[])[])[]

function throwsTried(throws: Throws, most: number, untried: Set<string>): (readonly string[])[] {
  const total = throws.reduce((n, positions) => n * positions.length, 1)
  if (total <= most)
    return throws.reduce<(readonly string[])[]>(
      (sets, positions) => sets.flatMap((ids) => positions.map((more) => [...ids, ...more])),
      [[]],
    )
  for (const id of throws.flat(2)) untried.add(id)
  const first = throws.map((positions) => positions[0]!)
  return [
    first.flat(),
    ...throws.flatMap((positions, i) =>
      positions.slice(1).map((other) => first.flatMap((ids, j) => (i === j ? other : ids))),
    ),
  ].slice(0, most)
}

/** A position that leads nowhere lets nothing through that another does not, and is left out. */
function throwsOf(all: Border): Throws {
  const throws = new Map<string, Map<string, string[]>>()
  for (const [id, { part, branch }] of all.branches) {
    if (!branch.changeover) continue
    const key = `${part}/${branch.changeover.name}`
    const positions = throws.get(key) ?? new Map<string, string[]>()
    throws.set(key, positions)
    positions.set(branch.changeover.position, [...(positions.get(branch.changeover.position) ?? []), id])
  }
  if (throws.size === 0) return []
  const joins = joinsAt(all)
  const ends = new Map(all.form.branches.map((b) => [b.id, [b.from, b.to]]))
  const leads = (id: string): boolean => ends.get(id)!.every((node) => joins.get(node)! > 1)
  return [...throws.values()].flatMap((positions) => {
    const leading = [...positions].filter(([, ids]) => ids.some(leads))
    const tried = leading.length > 0 ? leading : [...positions].slice(0, 1)
    return [
      tried.map(([closed]) => [...positions].flatMap(([position, ids]) => (position === closed ? [] : ids))),
    ]
  })
}

/** Ends of branches and terminals of devices at each node. */
function joinsAt({ form }: Border): Map<string, number> {
  const count = new Map<string, number>()
  const add = (node: string): unknown => count.set(node, (count.get(node) ?? 0) + 1)
  for (const b of form.branches) [b.from, b.to].forEach(add)
  for (const d of form.devices) [d.positive, d.negative].forEach(add)
  return count
}

/** Contacts that are closed and lie in a meshed part, by part. */
function meshedContacts(all: Border, p: Prepared): Map<number, string[]> {
  const { of } = blocksOf(p.graph)
  const contacts = new Map<number, string[]>()
  p.form.branches.forEach((b, e) => {
    const branch = all.branches.get(b.id)?.branch
    if (of[e]! < 0 || branch?.kind !== 'contact' || branch.changeover) return
    contacts.set(of[e]!, [...(contacts.get(of[e]!) ?? []), b.id])
  })
  return contacts
}

/** Every choice of at least one. */
function subsets(ids: readonly string[]): string[][] {
  return Array.from({ length: 2 ** ids.length - 1 }, (_, n) => ids.filter((_, i) => ((n + 1) >> i) % 2 === 1))
}
