import { kindOf } from '../kinds/all'
import { boxOf, terminalsOf } from '../kinds/place'
import type { Design, Part } from '../model/design'
import type { Side } from '../model/kind'
import { meets } from './outlinepieces'
import type { Area } from './paper'
import type { SceneOutline } from './scene'

/**
 * Room inside an outline round one mains part that no conductor passes through: all of it but the sides that its
 * terminals face, so that none of another voltage is read as inside. Where several parts share an outline, conductors run
 * between them, and nothing is closed.
 */
export function mainsWalls(
  design: Design,
  parts: readonly Part[],
  outlines: readonly SceneOutline[],
): readonly Area[] {
  const mains = parts.filter((p) => kindOf(p.kind)?.group === 'mains')
  return outlines.flatMap((outline) => {
    if (outline.zone !== null) return []
    const [part, ...more] = mains.filter((p) => meets(outline, boxOf(p, design.conductors)))
    return part && more.length === 0 ? [closed(design, part, outline)] : []
  })
}

function closed(design: Design, part: Part, outline: Area): Area {
  const box = boxOf(part, design.conductors)
  const faced = new Set<Side>(terminalsOf(part, design.conductors).map((t) => t.side))
  const x = faced.has('left') ? box.x : outline.x
  const y = faced.has('up') ? box.y : outline.y
  const right = faced.has('right') ? box.x + box.w : outline.x + outline.w
  const bottom = faced.has('down') ? box.y + box.h : outline.y + outline.h
  return { x, y, w: right - x, h: bottom - y }
}
