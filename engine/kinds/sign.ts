import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import { arc, circle, line, moving } from './draw'

/** Signs that several symbols share, after IEC 60617 practice. */

/** Marks that keep standing, however their symbol is turned or mirrored, about a point that goes along with it. */
export const standing = (x: Millimetres, y: Millimetres, marks: readonly Mark[]): readonly Mark[] =>
  marks.map((mark) => ({ ...mark, upright: [x, y] as const }))

/** Direct current: a stroke over a broken one, centred on a point. */
export const directSign = (x: Millimetres, y: Millimetres): readonly Mark[] =>
  standing(x, y, [
    line([x - 1.5, y - 0.5, x + 1.5, y - 0.5]),
    ...[-1.5, -0.35, 0.8].map((dx) => line([x + dx, y + 0.5, x + dx + 0.7, y + 0.5])),
  ])

/** Alternating current: one wave, centred on a point. */
export const alternatingSign = (x: Millimetres, y: Millimetres): readonly Mark[] =>
  standing(x, y, [arc(x - 0.8, y + 0.1, 0.8, 180, 360), arc(x + 0.8, y + 0.1, 0.8, 0, 180)])

/** The pivot of a moving contact. */
export const pivot = (x: Millimetres, y: Millimetres): Mark => circle(x, y, 0.5, { fill: 'ink', pen: 'thin' })

/** A make contact across a box of width w: pivot on the left, open lever, fixed contact on the right; worked, it is closed. */
export const makeContact = (w: Millimetres, y: Millimetres): readonly Mark[] => [
  line([0, y, w / 2 - 3.75, y]),
  pivot(w / 2 - 3.75, y),
  moving(
    line([w / 2 - 3.75, y, w / 2 + 3.4, y - 3.5], { pen: 'strong' }),
    line([w / 2 - 3.75, y, w / 2 + 3.75, y]),
  ),
  line([w / 2 + 3.75, y, w, y]),
]

/** Height of the lever of `makeContact` above its line at the middle, where a link takes hold of it. */
const LEVER_MIDDLE: Millimetres = 1.8

/** The broken line from what works a make contact, at `from`, to the middle of its lever; it goes with the lever. */
export const leverLink = (x: Millimetres, from: Millimetres, y: Millimetres): Mark =>
  moving(line([x, from, x, y - LEVER_MIDDLE], { pen: 'thin', dash: true }), line([x, from, x, y]))

/** Frame or chassis: a stroke with three slanted ones below, hanging from a point. */
export const frameSign = (x: Millimetres, y: Millimetres): readonly Mark[] => [
  line([x - 1.9, y, x + 1.9, y], { pen: 'strong' }),
  ...[-1.9, 0, 1.9].map((dx) => line([x + dx, y, x + dx - 0.9, y + 1.6])),
]
