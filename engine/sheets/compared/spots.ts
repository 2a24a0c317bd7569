import type { Comparison } from '../../calc/compare/changes'
import { boxOf } from '../../kinds/place'
import type { Design, TerminalRef } from '../../model/design'
import { partById } from '../../model/lookup'
import type { Millimetres } from '../../units'
import { around, extentOf } from '../extent'
import type { Area } from '../paper'
import { portOf } from '../ports'
import { tickAt } from '../runmarks'
import type { Scene } from '../scene'

/** As much of a drawing as is needed to find things on it. */
export type Drawn = Pick<Scene, 'parts' | 'conductors' | 'labels' | 'outlines' | 'texts'>

/** Half the side of the spot round a place without words, mm. */
const AROUND: Millimetres = 3

/**
 * Where on a drawing of the later state something has changed: round parts with their words, round the words of
 * conductors, round texts and the names of outlines; where something was taken out, round the terminals that it hung on
 * and, on the same drawing, the place where it was, if that is free now. What has only moved has no spot. Linear.
 */
export function changedSpots(drawn: Drawn, comparison: Comparison, before: Design, after: Design): Area[] {
  const { parts, conductors, zones, texts } = comparison
  const touched = (list: typeof parts): ReadonlySet<string> =>
    new Set([...list.added, ...list.changed.map((c) => c.id)])
  const [newParts, newRuns, newOnSheet] = [
    touched(parts),
    touched(conductors),
    new Set([...touched(zones), ...touched(texts)]),
  ]
  const gonePorts = before.conductors
    .filter((c) => conductors.removed.includes(c.id))
    .flatMap((conductor) =>
      [conductor.from, conductor.to].flatMap((end) =>
        portSpot(drawn, after, end).map((spot) => ({ conductor, spot })),
      ),
    )
  return [
    ...drawn.parts
      .filter((p) => newParts.has(p.id))
      .map((p) => around([p, ...wordsOf(drawn, { part: p.id })])),
    ...drawn.conductors
      .filter((c) => newRuns.has(c.id) || (c.withReturn !== null && newRuns.has(c.withReturn)))
      .map((c) => around(runSpot(drawn, c))),
    ...[...drawn.texts, ...drawn.outlines.map((o) => o.name)].filter((t) => newOnSheet.has(t.id)),
    ...gonePorts.map(({ spot }) => spot),
    ...before.parts
      .filter((p) => parts.removed.includes(p.id))
      .flatMap((p) => {
        const was = boxOf(p, before.conductors)
        const hung = before.conductors.filter((c) => c.from.part === p.id || c.to.part === p.id)
        const seen = hung.some((c) => gonePorts.some((port) => port.conductor === c))
        const elsewhere = !seen && hung.some((c) => [c.from, c.to].some((end) => partById(after, end.part)))
        return elsewhere || (seen && inTheWay(drawn, was)) ? [] : [was]
      }),
  ]
}

const inTheWay = ({ parts, labels }: Drawn, area: Area): boolean =>
  [...parts, ...labels.map(extentOf)].some((other) => touches(other, area, 0))

const wordsOf = ({ labels }: Drawn, of: { readonly part: string } | { readonly conductor: string }): Area[] =>
  labels
    .filter((l) =>
      'part' in of
        ? 'part' in l.of && l.of.part === of.part
        : 'conductor' in l.of && l.of.conductor === of.conductor,
    )
    .map(extentOf)

function runSpot(drawn: Drawn, conductor: Drawn['conductors'][number]): Area[] {
  const words = wordsOf(drawn, { conductor: conductor.id })
  return words.length > 0 ? words : [squareAt(tickAt(conductor).at)]
}

/** The terminal that a conductor was taken from, where its part is still drawn; the drawing may place parts its own way. */
function portSpot(drawn: Drawn, after: Design, end: TerminalRef): Area[] {
  const [at, part, port] = [
    drawn.parts.find((p) => p.id === end.part),
    partById(after, end.part),
    portOf(after, end),
  ]
  if (!at || !part || !port) return []
  const box = boxOf(part, after.conductors)
  return [squareAt([port.x + at.x - box.x, port.y + at.y - box.y])]
}

const squareAt = ([x, y]: readonly [number, number]): Area => ({
  x: x - AROUND,
  y: y - AROUND,
  w: 2 * AROUND,
  h: 2 * AROUND,
})

/** Areas that touch one another as one, until none do. O(areas²) for each that is joined. */
export function joinedAreas(areas: readonly Area[], clear: Millimetres): Area[] {
  const left = [...areas]
  for (let i = 0; i < left.length; i++) {
    const k = left.findIndex((other, n) => n > i && touches(left[i]!, other, clear))
    if (k < 0) continue
    left[i] = around([left[i]!, left[k]!])
    left.splice(k, 1)
    i = -1
  }
  return left
}

export const touches = (a: Area, b: Area, clear: Millimetres): boolean =>
  a.x < b.x + b.w + clear && b.x < a.x + a.w + clear && a.y < b.y + b.h + clear && b.y < a.y + a.h + clear
