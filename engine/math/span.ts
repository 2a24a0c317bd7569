import type { BlockTree } from './blocktree'

/**
 * The blocks on the ways between the vertices of a set, as few as join them (in each part of the graph). Prepared once;
 * O(the ways up to the root) a set.
 */
export function spans(
  { jointVertex, jointBlock, top }: BlockTree,
  vertexCount: number,
): (set: ReadonlyMap<number, unknown>) => number[] {
  /** Block that each vertex hangs below; −1 at a root. */
  const below = new Int32Array(vertexCount).fill(-1)
  for (let j = 0; j < jointVertex.length; j++)
    if (top[jointBlock[j]!] !== j) below[jointVertex[j]!] = jointBlock[j]!
  /** Blocks on the ways: of a block, how many ways enter it from below and the vertex of the last of them. */
  const ways = new Int32Array(top.length)
  const entry = new Int32Array(top.length)
  /** Of a vertex, how many blocks on the ways hang from it, and the last of them. */
  const hanging = new Int32Array(vertexCount)
  const last = new Int32Array(vertexCount)
  const isLeft = new Uint8Array(vertexCount)

  return (set) => {
    const blocks: number[] = []
    const left: number[] = []
    const roots: number[] = []
    for (const v of set.keys())
      for (let x = v; isLeft[x] === 0; ) {
        const b = below[x]!
        if (b === -1) break
        isLeft[x] = 1
        left.push(x)
        entry[b] = x
        if (ways[b]!++ > 0) break
        blocks.push(b)
        x = jointVertex[top[b]!]!
        last[x] = b
        if (hanging[x]!++ === 0 && below[x] === -1) roots.push(x)
      }
    for (const root of roots)
      for (let x = root; !set.has(x) && hanging[x] === 1; ) {
        const b = last[x]!
        if (ways[b] !== 1) break
        ways[b] = 0
        x = entry[b]!
      }
    const needed = blocks.filter((b) => ways[b]! > 0)
    for (const x of left) isLeft[x] = 0
    for (const b of blocks) {
      ways[b] = 0
      hanging[jointVertex[top[b]!]!] = 0
    }
    return needed
  }
}
