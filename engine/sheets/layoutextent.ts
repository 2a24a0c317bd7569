import { around, extentOf } from './extent'
import type { Layout } from './layout'
import type { Area } from './paper'
import type { SceneLabel } from './scene'

/** The area that a layout takes with its labels. */
export const extentOfLayout = (layout: Layout, labels: readonly SceneLabel[]): Area =>
  around([
    ...layout.parts,
    ...layout.outlines,
    ...layout.outlines.map((o) => o.name),
    ...layout.texts,
    ...layout.flags.map((f) => f.box),
    ...layout.conductors.flatMap((c) => c.points.map(([x, y]) => ({ x, y, w: 0, h: 0 }))),
    ...labels.map(extentOf),
  ])
