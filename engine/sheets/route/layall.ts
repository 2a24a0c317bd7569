import { wayOver } from './over'
import { layPinned } from './pinned'
import { place, type Sheet, takeOff } from './sheet'
import { freeWay, targetOf } from './way'

/** Cost of pushing another conductor aside, and how much dearer it grows each time that it happens to it. */
const PUSH = 240
const GRUDGE = 240
const NEVER = 1 << 20
/** Searches that push others aside, times the nodes of the sheet, at most: a crowded large sheet is still laid in seconds. */
const MOST_WORK = 6e7

/** Lays the lines that are not laid yet; where there is no free way others are pushed aside and laid anew, if they may. */
export function layAll(s: Sheet, wanted: readonly number[], mayPush = true): void {
  const queue = wanted.filter((i) => !layPinned(s, i))
  const nodes = s.lattice.cols * s.lattice.rows
  let pushes = !mayPush ? 0 : 40 + Math.min(4 * queue.length, Math.floor(MOST_WORK / nodes))
  for (let k = 0; k < queue.length; k++) {
    const i = queue[k]!
    const line = s.lines[i]!
    if (line.corners.length > 0 || line.from.exits.length === 0 || line.to.exits.length === 0) continue
    const way = freeWay(s, targetOf(line.from), targetOf(line.to))
    if (way) place(s, i, way.corners)
    else if (!line.isHopeless && pushes-- > 0) queue.push(...pushThrough(s, i))
  }
}

/** Lays line `i` over others, and takes those off; returns them. None where even that is impossible. */
function pushThrough(s: Sheet, i: number): number[] {
  const dear = (id: number): number => {
    const other = s.lines[id]
    return !other ? 0 : other.pinned ? NEVER : PUSH + GRUDGE * other.pushed
  }
  const way = wayOver(s, i, dear, NEVER)
  if (!way) return []
  const others = [...way.others]
  for (const other of others) {
    takeOff(s, other)
    s.lines[other]!.pushed++
  }
  place(s, i, way.corners)
  return others
}
