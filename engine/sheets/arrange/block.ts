import type { Millimetres } from '../../units'
import { channelWidths } from './channels'
import { stackColumns } from './columns'
import type { Plan } from './graph'
import type { ArrangePart, Place } from './part'
import { snapUp } from './stack'

/** Parts laid out together, from 0, 0. */
export interface Block {
  readonly w: Millimetres
  readonly h: Millimetres
  readonly places: ReadonlyMap<number, Place>
}

/** Free height below a part: room for its name, designation and rating; loads have theirs beside them. */
const ROOM_BELOW: Millimetres = 10
const ROOM_BELOW_LOAD: Millimetres = 2.5
/** Free width right of a part that has its words beside it. */
const ROOM_BESIDE: Millimetres = 30
const ROOM_ABOVE: Millimetres = 7.5
/** Free strip round words. */
const CLEAR: Millimetres = 2
/** Most height of a strip across a block that holds no part. */
const EMPTY: Millimetres = 20

/** Words of a load stand beside it, and reach below it where they are taller; those of others stand above or below. */
const roomBelow = ({ column, words, h }: ArrangePart): Millimetres =>
  column === 'load'
    ? ROOM_BELOW_LOAD + Math.max(0, snapUp((words?.h ?? 0) - h))
    : words
      ? snapUp(words.h + CLEAR)
      : ROOM_BELOW

const roomBeside = ({ words }: ArrangePart): Millimetres => (words ? snapUp(words.w + CLEAR) : ROOM_BESIDE)

/** Lays columns from left to right. `isFixed`: columns that keep the order they are given in. */
export function layBlock(
  plan: Plan,
  columns: readonly (readonly number[])[],
  isFixed: (column: number) => boolean = () => false,
): Block {
  const isLoad = (i: number): boolean => plan.parts[i]!.column === 'load'
  const stack = {
    columns: columns.filter((c) => c.length > 0).map((c) => [...c]),
    top: new Map<number, Millimetres>(),
    gap: (i: number) => roomBelow(plan.parts[i]!),
  }
  const kept = columns.flatMap((c, k) => (c.length > 0 ? [isFixed(k)] : []))
  stackColumns(plan, stack, (c) => kept[c]!)
  const widths = channelWidths(plan, stack, (c) =>
    Math.max(0, ...stack.columns[c]!.filter(isLoad).map((i) => roomBeside(plan.parts[i]!))),
  )

  closeUp(plan, stack.top)
  const places = new Map<number, Place>()
  const least = Math.min(...stack.top.values())
  let x = 0
  let h = 0
  stack.columns.forEach((column, c) => {
    const width = Math.max(...column.map((i) => plan.parts[i]!.w))
    for (const i of column) {
      const part = plan.parts[i]!
      const aside = isLoad(i) ? 0 : Math.floor((width - part.w) / 5) * 2.5
      const y = stack.top.get(i)! - least + ROOM_ABOVE
      places.set(i, { x: x + aside, y })
      h = Math.max(h, y + part.h)
    }
    x += width + widths[c]!
  })
  return { w: snapUp(x), h: snapUp(h), places }
}

/** Takes out what is more than usual of level strips in which there is no part. */
function closeUp(plan: Plan, top: Map<number, Millimetres>): void {
  const byTop = [...top.keys()].sort((a, b) => top.get(a)! - top.get(b)!)
  let end = Number.NEGATIVE_INFINITY
  let out = 0
  for (const i of byTop) {
    const at = top.get(i)!
    if (end > Number.NEGATIVE_INFINITY) out += Math.max(0, at - end - EMPTY)
    end = Math.max(end, at + plan.parts[i]!.h)
    top.set(i, at - out)
  }
}
