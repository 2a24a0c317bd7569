import type { Design } from '../../../engine/model/design'

/** What the bare page draws: a node for each part, an edge for each conductor. Places in px. */
export interface BareDrawing {
  nodes: { id: string; position: { x: number; y: number }; data: { label: string } }[]
  edges: { id: string; source: string; target: string }[]
}

const PX_PER_MM = 4

export const bareOf = ({ parts, conductors }: Design): BareDrawing => ({
  nodes: parts.map(({ id, x, y, designation }) => ({
    id,
    position: { x: x * PX_PER_MM, y: y * PX_PER_MM },
    data: { label: designation },
  })),
  edges: conductors.map(({ id, from, to }) => ({ id, source: from.part, target: to.part })),
})
