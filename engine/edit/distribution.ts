import { kindOf } from '../kinds/all'
import type { Part } from '../model/design'

/** Distribution parts that only pass a line on, and do not divide it. */
const IN_LINE: readonly string[] = ['junction', 'connector', 'chassis-point']

/** A fuse block, a bar: where a current is divided, or returns meet. */
export const isBlock = (part: Part): boolean =>
  kindOf(part.kind)?.group === 'distribution' && !IN_LINE.includes(part.kind)
