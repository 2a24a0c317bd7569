import type { ConductorId, Design } from '../model/design'
import { LEAST } from './block'
import { endTag } from './endtag'
import { widthOf } from './measure'
import type { Area } from './paper'
import { portOf } from './ports'
import type { RoutePort } from './route/request'
import type { Shown } from './shown'

/** A reference at the edge of a sheet, where a conductor leads to another sheet. */
export interface Flag {
  readonly conductor: ConductorId
  /** Which end of the conductor lies on the other sheet. */
  readonly end: 'from' | 'to'
  readonly side: 'left' | 'right'
  /** Where the conductor ends there: "T5 +", "F4:2". */
  readonly far: string
  readonly port: RoutePort
  readonly box: Area
}

const HEIGHT = 2.5
/** Room at both ends of the words. */
const ENDS = 4
/** Between the outermost part and the flags: room for conductors that go up and down. */
const CLEAR = 10
/** Apart from each other, mm. */
const PITCH = 5

/**
 * Flags for the conductors of which one end lies outside `area`, each at the side that faces its other end, in the
 * order of the near ends, so that few of them cross.
 */
export function flagsFor(
  design: Design,
  shown: readonly Shown[],
  inside: (part: string) => boolean,
  area: Area,
): Flag[] {
  const wanted = shown.flatMap(({ conductor: c }) => {
    const end = inside(c.from.part) ? ('to' as const) : ('from' as const)
    const near = portOf(design, end === 'to' ? c.from : c.to)
    const far = portOf(design, c[end])
    if (inside(c.from.part) === inside(c.to.part) || !near || !far) return []
    const tag = endTag(design, c[end])
    return [{ conductor: c.id, end, near, side: sideOf(near, far, area), far: tag, w: widthFor(tag) }]
  })
  return (['left', 'right'] as const).flatMap((side) => {
    const here = wanted
      .filter((w) => w.side === side)
      .sort((a, b) => a.near.y - b.near.y || a.near.x - b.near.x)
    const ys = spread(here.map((w) => w.near.y))
    const x = side === 'left' ? down(area.x - CLEAR) : -down(-(area.x + area.w + CLEAR))
    return here.map(({ conductor, end, far, w }, i): Flag => {
      const y = ys[i]!
      return {
        ...{ conductor, end, side, far },
        port: { x, y, side: side === 'left' ? 'right' : 'left' },
        box: { x: side === 'left' ? x - w : x, y: y - HEIGHT / 2, w, h: HEIGHT },
      }
    })
  })
}

/** Width of a flag: room for the longest number and reference with its tag. */
const widthFor = (tag: string): number => Math.ceil(widthOf(`W888 → 88/B88 ${tag}`, LEAST, 'bold') + ENDS)

function sideOf(near: RoutePort, far: RoutePort, { x, w }: Area): 'left' | 'right' {
  if (far.x < x) return 'left'
  if (far.x > x + w) return 'right'
  if (near.side === 'left' || near.side === 'right') return near.side
  return near.x < x + w / 2 ? 'left' : 'right'
}

/** Heights a pitch apart at least, as near to the wanted ones as that allows, on the grid. */
function spread(wanted: readonly number[]): number[] {
  const ys: number[] = []
  for (const y of wanted) ys.push(Math.max(down(y), (ys.at(-1) ?? -Infinity) + PITCH))
  const excess = ys.length > 0 ? down((ys.at(-1)! - wanted.at(-1)!) / 2) : 0
  return ys.map((y) => y - excess)
}

const GRID = 2.5
const down = (mm: number): number => Math.floor(mm / GRID) * GRID
