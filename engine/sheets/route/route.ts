import { bargain } from './bargain'
import { improve } from './improve'
import { keepPrevious } from './keep'
import { layAll } from './layall'
import { layingOrder } from './order'
import type { RouteBox, Routed, RouteRequest, RouteResult } from './request'
import { resultOf } from './result'
import { type Sheet, sheetOf } from './sheet'
import { spread } from './spread'
import { untangle } from './untangle'

export interface RouteOptions {
  /** Lay others anew where there is no free way? Default true. False: such a conductor is left plain, and soon known. */
  readonly pushes?: boolean
}

/**
 * Routes conductors at right angles round boxes: never through a box or nearer to it than 1.25 mm, never along
 * another conductor, with few bends and crossings. Conductors of one terminal share its stub and nothing else.
 * Boxes and ports are meant to stand on the 1.25 mm lattice; a port beside it gets a small step in its stub, and less
 * room. Deterministic.
 *
 * @param previous routes of an earlier call. A conductor whose ends have not moved and whose way is still free keeps
 *   it. While a part is dragged, give the routes from before the drag each time, so that lines which had to
 *   give way return.
 */
export function routeAll(
  boxes: readonly RouteBox[],
  requests: readonly RouteRequest[],
  previous: readonly Routed[] = [],
  { pushes = true }: RouteOptions = {},
): RouteResult {
  const sheet = sheetOf(boxes, requests)
  const order = layingOrder(sheet)
  const kept = keepPrevious(sheet, order, previous)
  layAll(sheet, order, pushes)
  polish(sheet, kept === 0)
  return resultOf(sheet, kept)
}

/**
 * Work on what was laid now, the less of it the more lines there are: everything is to be there at once. Lines that
 * are kept do not bargain, so beside them there is little to gain.
 */
function polish(sheet: Sheet, isFirst: boolean): void {
  const loose = sheet.lines.filter((line) => line.isLoose).length
  if (loose > 600) return
  const isThorough = isFirst && loose <= 150
  improve(sheet, isThorough ? 3 : 1)
  if (isThorough) {
    untangle(sheet)
    bargain(sheet)
  }
  spread(sheet, isThorough ? 8 : 2)
}
