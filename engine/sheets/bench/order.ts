import type { Design, PartId } from '../../model/design'
import { partById } from '../../model/lookup'
import { sizeIn } from '../../model/sizes'
import { SIZES } from '../../tables/sizes'
import { colourWords } from '../schedules/cable'
import { endOf, titleOf } from '../schedules/ends'
import { isNotKnown, natural } from '../schedules/schedule'
import type { BenchCard } from './card'

/** The order in which conductors are built. */
export const BENCH_ORDERS = { part: 'By part', size: 'By size', location: 'By location' } as const
export type BenchOrder = keyof typeof BENCH_ORDERS

/** Conductors that are built one after the other. */
export interface BenchGroup {
  readonly title: string
  readonly cards: readonly BenchCard[]
}

/** Cards in building order, in groups; nobody builds mains here, so that it stands in a group of its own at the end. */
export function benchGroups(
  design: Design,
  cards: readonly BenchCard[],
  order: BenchOrder,
): readonly BenchGroup[] {
  const place = PLACES[order](design, cards)
  const groups = new Map<string, { readonly title: string; readonly cards: [string, BenchCard][] }>()
  for (const card of cards) {
    const at = card.work === 'mains' ? MAINS : place(card)
    const group = groups.get(at.group) ?? { title: at.title, cards: [] }
    group.cards.push([at.within, card])
    groups.set(at.group, group)
  }
  return [...groups]
    .sort(([a], [b]) => natural(a, b))
    .map(([, { title, cards: inside }]) => ({
      title,
      cards: inside
        .sort(([a, p], [b, q]) => natural(a, b) || natural(p.number, q.number))
        .map(([, card]) => card),
    }))
}

/** Where a card stands: its group, what that is called, and its place within; both keys in the order of people. */
interface Place {
  readonly group: string
  readonly title: string
  readonly within: string
}

/** Behind everything else: natural order puts digits and letters before it. */
const LAST = '\uffff'
const MAINS: Place = { group: `${LAST}${LAST}`, title: 'Mains: licensed persons only', within: '' }

/** How many conductors of the same work (copper, data) as a card meet at a part. */
function meetings(cards: readonly BenchCard[]): (card: BenchCard, part: PartId) => number {
  const key = ({ work }: BenchCard, part: PartId): string => `${work} ${part}`
  const counts = new Map<string, number>()
  for (const card of cards)
    for (const { at } of [card.from, card.to])
      counts.set(key(card, at.part), (counts.get(key(card, at.part)) ?? 0) + 1)
  return (card, part) => counts.get(key(card, part)) ?? 0
}

type PlaceOf = (card: BenchCard) => Place

const PLACES: Readonly<Record<BenchOrder, (design: Design, cards: readonly BenchCard[]) => PlaceOf>> = {
  /** At the part where more of them meet: a block with all its ways, a bar with all its studs, in order of terminals. */
  part: (design, cards) => {
    const meet = meetings(cards)
    return (card) => {
      const [from, to] = [card.from.at, card.to.at]
      const end = meet(card, to.part) > meet(card, from.part) ? to : from
      const part = partById(design, end.part)
      const { short } = endOf(design, end)
      return { group: part?.designation ?? end.part, title: part ? titleOf(part) : end.part, within: short }
    }
  },
  /** As in the cut list: by cable, the thinnest first; in it the longest piece first. */
  size: (design) => (card) => {
    const size = sizeIn(design, card.conductor.size)
    const key = card.differences.find((d) => d.what === 'size')?.built ?? size?.key
    const rank = SIZES.findIndex((s) => s.key === key)
    const words = isNotKnown(card.size) ? 'Size not chosen' : String(card.size)
    return {
      group: `${isNotKnown(card.size) ? LAST : rank < 0 ? SIZES.length : rank} ${words} ${card.colour}`,
      title: `${words} · ${colourWords(card.colour)}`,
      within: typeof card.cut === 'number' ? String(Math.round((LONGEST_M - card.cut) * 1000)) : LAST,
    }
  },
  /** Within one place first, then from there to another. */
  location: () => (card) => {
    const places = [card.from.location, card.to.location].map((p) => p || NO_PLACE).sort(natural)
    const [a, b] = places as [string, string]
    const stated = places.every((p) => p !== NO_PLACE)
    return {
      group: stated ? (a === b ? a : `${a} ${b}`) : `${LAST}${a}${b}`,
      title: a === b ? a : `${a} – ${b}`,
      within: card.number,
    }
  },
}

const NO_PLACE = 'no place stated'
/** Longer than anything that is cut. */
const LONGEST_M = 100_000
