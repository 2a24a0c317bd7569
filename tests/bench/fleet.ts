import { apply } from '../../engine/edit/apply'
import type { Conductor, Design, Part } from '../../engine/model/design'
import { newDesign } from '../../engine/model/newdesign'
import { analyse } from '../../engine/rules/analyse'
import { arrangeEdit } from '../../engine/sheets/arrangedesign'
import { everyday } from './everyday'

/** Between the drawings of two systems, mm. */
const APART_MM = 60
const IN_A_ROW = 3

/**
 * An invented drawing of so many separate systems of everyday shape, each of 144 parts and 252 conductors, arranged
 * and side by side.
 */
export function fleet(systems: number): Design {
  const one = everyday(246)
  const arranged = apply(one, arrangeEdit(one, analyse(one).answers))
  if (arranged.refused) throw new Error(arranged.why)
  const { parts, conductors } = arranged.design
  const w = Math.max(...parts.map((p) => p.x)) + APART_MM
  const h = Math.max(...parts.map((p) => p.y)) + APART_MM
  const all = Array.from({ length: systems }, (_, k) => ({
    parts: parts.map((p): Part => {
      const [right, down] = [(k % IN_A_ROW) * w, Math.floor(k / IN_A_ROW) * h]
      return { ...p, id: `${p.id}-${k}`, designation: `${p.designation}-${k}`, x: p.x + right, y: p.y + down }
    }),
    conductors: conductors.map((c): Conductor => {
      const end = (t: Conductor['from']) => ({ ...t, part: `${t.part}-${k}` })
      return { ...c, id: `${c.id}-${k}`, number: `${c.number}-${k}`, from: end(c.from), to: end(c.to) }
    }),
  }))
  return {
    ...newDesign(`fleet-${systems}`),
    parts: all.flatMap((s) => s.parts),
    conductors: all.flatMap((s) => s.conductors),
  }
}
