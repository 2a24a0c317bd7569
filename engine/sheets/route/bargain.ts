import { wayOver } from './over'
import { place, type Sheet, takeOff } from './sheet'
import { betterWay, costOf, targetOf } from './way'

/** What a step on another line counts while bargaining: it may well find another way that costs it little. */
const ASKED = 6
const NEVER = 1 << 20
/** With more lines than this in the way there is nothing to gain. */
const MOST = 4

/**
 * A line with more than the fewest corners takes the way that it would like, and those that lie there find another;
 * that is kept where all of them together are cheaper for it.
 */
export function bargain(s: Sheet): void {
  s.lines.forEach((line, i) => {
    if (line.isLoose && line.corners.length > 3) offer(s, i)
  })
}

function offer(s: Sheet, i: number): void {
  const line = s.lines[i]!
  const old = line.corners
  takeOff(s, i)
  const own = costOf(s, line, old)
  const dear = (other: number): number => (s.lines[other]!.isLoose ? ASKED : NEVER)
  const wish = wayOver(s, i, dear, own)
  if (!wish || wish.others.size > MOST) {
    place(s, i, old)
    return
  }
  const others = [...wish.others]
  const before = others.map((o) => s.lines[o]!.corners)
  // Each is priced with those before it still there, so that every crossing counts once.
  let worth = own
  others.forEach((o) => {
    const corners = s.lines[o]!.corners
    takeOff(s, o)
    worth += costOf(s, s.lines[o]!, corners)
  })
  let left = worth - costOf(s, line, wish.corners)
  place(s, i, wish.corners)
  const laid: number[] = []
  for (const o of others) {
    const way = betterWay(s, targetOf(s.lines[o]!.from), targetOf(s.lines[o]!.to), left)
    if (!way) break
    place(s, o, way.corners)
    left -= way.cost
    laid.push(o)
  }
  if (laid.length === others.length) return
  for (const o of [i, ...laid]) takeOff(s, o)
  others.forEach((o, k) => {
    place(s, o, before[k]!)
  })
  place(s, i, old)
}
