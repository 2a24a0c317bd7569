import { type Finder, finderOf } from './finder'
import { addBox, type Lattice, latticeOf, lay, lift } from './lattice'
import type { RouteBox, RouteRequest } from './request'
import { reserveTerminals, type Terminal, terminalKey } from './terminal'

/** Free strip around everything, mm: room to go round the outermost part. */
const MARGIN = 40

/** One conductor while the sheet is being routed. */
export interface Line {
  readonly request: RouteRequest
  readonly from: Terminal
  readonly to: Terminal
  /** Nodes from exit to exit, empty while it is not laid. */
  corners: number[]
  /** Laid segments that were placed by hand; they are never pushed aside. */
  pinned: boolean
  /** May be laid anew for a better drawing: neither kept from before nor placed by hand. */
  isLoose: boolean
  /** There was no way for it before, so it pushes nobody aside again. */
  isHopeless: boolean
  /** How often it was pushed aside. */
  pushed: number
}

export interface Sheet {
  readonly lattice: Lattice
  readonly finder: Finder
  readonly lines: readonly Line[]
}

export function sheetOf(boxes: readonly RouteBox[], requests: readonly RouteRequest[]): Sheet {
  const lattice = latticeOf(areaOf(boxes, requests), MARGIN)
  for (const box of boxes) addBox(lattice, box)
  const terminals = reserveTerminals(lattice, requests)
  const lines = requests.map((request) => ({
    request,
    from: terminals.get(terminalKey(request.from))!,
    to: terminals.get(terminalKey(request.to))!,
    corners: [],
    pinned: false,
    isLoose: true,
    isHopeless: false,
    pushed: 0,
  }))
  return { lattice, finder: finderOf(lattice), lines }
}

function areaOf(boxes: readonly RouteBox[], requests: readonly RouteRequest[]): RouteBox {
  let [x1, y1, x2, y2] = [Infinity, Infinity, -Infinity, -Infinity]
  const take = (x: number, y: number, w = 0, h = 0): void => {
    x1 = Math.min(x1, x)
    y1 = Math.min(y1, y)
    x2 = Math.max(x2, x + w)
    y2 = Math.max(y2, y + h)
  }
  for (const b of boxes) take(b.x, b.y, b.w, b.h)
  for (const { from, to, fixed } of requests) for (const p of [from, to, ...(fixed ?? [])]) take(p.x, p.y)
  return x1 > x2 ? { id: '', x: 0, y: 0, w: 0, h: 0 } : { id: '', x: x1, y: y1, w: x2 - x1, h: y2 - y1 }
}

/** Puts line `i` on the lattice along these corners. */
export function place(s: Sheet, i: number, corners: number[]): void {
  s.lines[i]!.corners = corners
  lay(s.lattice, corners, i)
}

export function takeOff(s: Sheet, i: number): void {
  const line = s.lines[i]!
  lift(s.lattice, line.corners)
  line.corners = []
}
