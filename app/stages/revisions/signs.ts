import type { ChangeKind, ChangeRow, Scene, XY } from '../../../engine'

/** Where a change is marked on one drawing: round things, or along the way of conductors. */
export interface Sign {
  readonly row: string
  readonly what: ChangeKind
  readonly boxes: readonly Box[]
  readonly ways: readonly (readonly XY[])[]
}

interface Box {
  readonly x: number
  readonly y: number
  readonly w: number
  readonly h: number
}

const MARKED = ['parts', 'conductors', 'sheet']

/** Signs of the rows that are about things on this drawing. */
export const signsOn = (scene: Scene, rows: readonly ChangeRow[]): readonly Sign[] =>
  rows.filter((r) => MARKED.includes(r.group)).map((r) => signOf(scene, r))

/** Where a row is on a drawing; without boxes and ways where it is not. */
export function signOf(scene: Scene, { key, what, group, parts, conductors, onSheet }: ChangeRow): Sign {
  const things = group === 'sheet' ? [] : parts
  return {
    row: key,
    what,
    boxes: [
      ...scene.parts.filter((p) => things.includes(p.id)),
      ...scene.texts.filter((t) => onSheet.includes(t.id)),
      ...scene.outlines.filter((o) => o.zone !== null && onSheet.includes(o.zone)).map((o) => o.name),
    ],
    ways: scene.conductors
      .filter(
        (c) => conductors.includes(c.id) || (c.withReturn !== null && conductors.includes(c.withReturn)),
      )
      .map((c) => c.points),
  }
}

/** Every corner of a sign: what has to come into sight. */
export const cornersOf = ({ boxes, ways }: Sign): readonly XY[] => [
  ...boxes.flatMap(({ x, y, w, h }): XY[] => [
    [x, y],
    [x + w, y + h],
  ]),
  ...ways.flat(),
]
