import type { Sheet } from './sheet'

/**
 * The order in which lines are laid: heavy before light, then groups that reach a short way, then short lines;
 * what is short and straight has the fewest other ways to go.
 */
export function layingOrder(s: Sheet): number[] {
  const reach = s.lines.map(({ request: { from, to } }) => Math.abs(from.x - to.x) + Math.abs(from.y - to.y))
  const bend = s.lines.map(({ request: { from, to } }) => (from.x === to.x || from.y === to.y ? 0 : 1))
  const groupReach = new Map<string, number>()
  s.lines.forEach(({ request: { group } }, i) => {
    if (group !== undefined) groupReach.set(group, Math.min(groupReach.get(group) ?? Infinity, reach[i]!))
  })
  const key = (i: number): number[] => {
    const { group, weight } = s.lines[i]!.request
    return [bend[i]!, -(weight ?? 1), group === undefined ? reach[i]! : groupReach.get(group)!, reach[i]!, i]
  }
  const keys = s.lines.map((_, i) => key(i))
  return s.lines.map((_, i) => i).sort((a, b) => compare(keys[a]!, keys[b]!))
}

function compare(a: readonly number[], b: readonly number[]): number {
  for (let k = 0; k < a.length; k++) if (a[k] !== b[k]) return a[k]! - b[k]!
  return 0
}
