import type { Mark } from '../../model/marks'
import { drawingMarks } from '../drawingmarks'
import type { Scene } from '../scene'

/** A whole scene as marks, or what of it `keep` lets through by id: for a drawing that is only looked at. */
export function sceneMarks(scene: Scene, keep: (id: string) => boolean = () => true): Mark[] {
  const { parts, conductors, labels, texts, outlines } = scene
  const layout = {
    ...scene,
    parts: parts.filter((p) => keep(p.id)),
    conductors: conductors.filter((c) => keep(c.id)),
    texts: texts.filter((t) => keep(t.id)),
    outlines: outlines.filter((o) => keep(o.zone ?? '')),
    joins: parts.every((p) => keep(p.id)) ? scene.joins : [],
    shown: [],
    partLabels: [],
    flags: [],
  }
  const words = labels.filter(({ of }) => keep('part' in of ? of.part : of.conductor))
  return drawingMarks({ layout, labels: words, tables: [], short: [], area: scene.box }, () => '')
}
