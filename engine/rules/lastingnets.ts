import { components } from '../math/components'
import { graphOf } from '../math/graph'
import { partById } from '../model/lookup'
import type { Case } from './rule'

/** Net of each node where combiners are open: what only they join, they join for a time. O(nodes + branches). */
export function lastingNets({ design, border, p }: Case): Int32Array {
  const lasting = p.form.branches.flatMap((b, e) => {
    const part = border.branches.get(b.id)?.part
    return part !== undefined && partById(design, part)?.kind === 'combiner' ? [] : [e]
  })
  const tail = Int32Array.from(lasting, (e) => p.graph.tail[e]!)
  const head = Int32Array.from(lasting, (e) => p.graph.head[e]!)
  return components(graphOf(p.graph.vertexCount, tail, head)).of
}
