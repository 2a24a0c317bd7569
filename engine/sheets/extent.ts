import type { Area } from './paper'
import type { SceneLabel } from './scene'

/** The smallest area that holds all of these; empty at the origin when there are none. */
export function around(areas: readonly Area[]): Area {
  let [x1, y1, x2, y2] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const { x, y, w, h } of areas) {
    x1 = Math.min(x1, x)
    y1 = Math.min(y1, y)
    x2 = Math.max(x2, x + w)
    y2 = Math.max(y2, y + h)
  }
  return x1 > x2 ? { x: 0, y: 0, w: 0, h: 0 } : { x: x1, y: y1, w: x2 - x1, h: y2 - y1 }
}

/** The room that a label takes: a turned one stands on its top left corner and reads upwards. */
export const extentOf = ({ x, y, w, h, turn }: SceneLabel): Area =>
  turn === 0 ? { x, y, w, h } : { x, y: y - w, w: h, h: w }
