import type { Answers } from '../calc/answers'
import { boxOf } from '../kinds/place'
import type { Design, Part } from '../model/design'
import { type Draft, type Drawing, draftOf, drawingOf, fits, roomIn } from './drawing'
import { around } from './extent'
import type { Content } from './layout'
import type { Area } from './paper'
import { placePartLabels } from './placeparts'
import { groupsFor, halved } from './split'

/** Room for flags at the sides and conductors above and below that is tried when parts are shared out, mm. */
const EDGES = [
  { w: 40, h: 5 },
  { w: 60, h: 12 },
  { w: 90, h: 24 },
] as const

/** Parts of one sheet. */
type Group = readonly Part[]

/** Lays groups of parts out, each once, and tells whether they fit on a sheet. */
interface Desk {
  readonly lay: (group: Group) => Draft
  readonly fits: (group: Group) => boolean
}

/**
 * The content of a view in as few drawings as have room in `room` at full size: lettering is never made smaller.
 * What is too large is cut into groups of parts, each laid out for itself; a conductor between two of them ends in a
 * flag on both. Parts keep their places to each other.
 */
export function drawingsOf(design: Design, answers: Answers | null, content: Content, room: Area): Drawing[] {
  const { w, h } = roomIn(room)
  const { parts, shown } = content
  const labels = placePartLabels(design, parts, answers)
  const areaOf = new Map(parts.map((p, i) => [p.id, around([boxOf(p, design.conductors), labels[i]!])]))
  const boxAround = (group: Group): Area => around(group.map((p) => areaOf.get(p.id)!))
  const desk = deskOf(
    (group) => draftOf(design, answers, content, group),
    (group) => boxAround(group).w <= w && boxAround(group).h <= h,
    (draft) => fits(draft, w, h),
  )
  const draw = (group: Group): Drawing => drawingOf(design, answers, desk.lay(group), w, h)
  if (parts.length < 2 || desk.fits(parts)) return [draw(parts)]

  const lay = (group: Group): Group[] =>
    group.length < 2 || desk.fits(group)
      ? [group]
      : halved(group, (p) => areaOf.get(p.id)!, shown).flatMap(lay)
  const all = boxAround(parts)
  const fewest = Math.ceil(all.w / w) * Math.ceil(all.h / h)
  let best: Group[] | null = null
  for (const edge of EDGES) {
    if (best && best.length <= fewest) break
    const split = groupsFor(parts, (p) => areaOf.get(p.id)!, shown, w - edge.w, h - edge.h).flatMap(lay)
    if (!best || split.length < best.length) best = split
  }
  return gathered(merged(best ?? [], desk), content, desk).map(draw)
}

function deskOf(
  layOut: (group: Group) => Draft,
  mayFit: (group: Group) => boolean,
  doesFit: (draft: Draft) => boolean,
): Desk {
  const known = new Map<string, Draft>()
  const lay = (group: Group): Draft => {
    const key = group
      .map((p) => p.id)
      .sort()
      .join(' ')
    const draft = known.get(key) ?? layOut(group)
    known.set(key, draft)
    return draft
  }
  return { lay, fits: (group) => mayFit(group) && doesFit(lay(group)) }
}

/** Groups of which two have room on one sheet together, joined; the smallest first. */
function merged(groups: readonly Group[], desk: Desk): Group[] {
  for (const small of [...groups].sort((a, b) => a.length - b.length))
    for (const other of groups) {
      const both = [...other, ...small]
      if (other === small || !desk.fits(both)) continue
      return merged(
        groups.filter((g) => g !== small).map((g) => (g === other ? both : g)),
        desk,
      )
    }
  return [...groups]
}

/** Parts that are joined to nothing on their own sheet, moved to a sheet that holds what they are joined to, where there is room. */
function gathered(groups: readonly Group[], { shown }: Content, desk: Desk): Group[] {
  const now = [...groups]
  for (const part of groups.flat()) {
    const own = now.findIndex((g) => g.includes(part))
    const ends = shown.flatMap(({ conductor: { from, to } }) =>
      from.part === part.id ? [to.part] : to.part === part.id ? [from.part] : [],
    )
    const at = ends.map((id) => now.findIndex((g) => g.some((p) => p.id === id)))
    if (at.length === 0 || at.includes(own) || now[own]!.length < 2) continue
    const target = [...new Set(at)].find((i) => i >= 0 && desk.fits([...now[i]!, part]))
    if (target === undefined) continue
    now[target] = [...now[target]!, part]
    now[own] = now[own]!.filter((p) => p !== part)
  }
  return now
}
