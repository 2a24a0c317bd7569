/** Sets that lie in one another or apart, as a forest; a set comes after every set that it lies in. */
export interface Nesting {
  /** Set that each set lies in; −1: none. */
  readonly inside: readonly number[]
  /** Choices of each set. */
  readonly choices: readonly (readonly number[])[]
  /** Members that lie in no smaller set, of each set. */
  readonly members: readonly (readonly number[])[]
  /** Choices whose set crosses one that was taken. */
  readonly crossing: readonly number[]
}

/**
 * Nests the sets of the given choices, largest first; of two that cross the smaller one, or the later one, is left out.
 * `setOf`: members of a choice, each once. O(members of all sets).
 */
export function nest(
  memberCount: number,
  choices: readonly number[],
  setOf: (choice: number) => readonly number[],
): Nesting {
  const innermost = new Int32Array(memberCount).fill(-1)
  const size: number[] = []
  const inside: number[] = []
  const held: number[][] = []
  const crossing: number[] = []
  const bySize = [...choices].sort((a, b) => setOf(b).length - setOf(a).length || a - b)
  for (const choice of bySize) {
    const set = setOf(choice)
    const around = innermost[set[0]!]!
    if (set.some((m) => innermost[m] !== around)) crossing.push(choice)
    else if (around !== -1 && size[around] === set.length) held[around]!.push(choice)
    else {
      for (const m of set) innermost[m] = size.length
      size.push(set.length)
      inside.push(around)
      held.push([choice])
    }
  }
  const members: number[][] = size.map(() => [])
  innermost.forEach((set, m) => {
    if (set !== -1) members[set]!.push(m)
  })
  return { inside, choices: held, members, crossing }
}
