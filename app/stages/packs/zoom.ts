import type { PageRow } from '../../worker/packtalk'

/** How large a page is shown: whole, as wide as the room, or so many times its size on paper. */
export type Zoom = 'whole' | 'width' | number

/** CSS pixels a millimetre: 96 to the inch of 25.4 mm. */
const PX_PER_MM = 96 / 25.4
/** From one step to the next, and the least and the greatest. */
const STEP = 1.25
const [LEAST, MOST] = [0.1, 6]

/** Times its size on paper. `room` in CSS pixels. */
export function scaleOf(zoom: Zoom, page: PageRow, room: { readonly w: number; readonly h: number }): number {
  const across = room.w / (page.w * PX_PER_MM)
  if (zoom === 'width') return across
  return zoom === 'whole' ? Math.min(across, room.h / (page.h * PX_PER_MM)) : zoom
}

export const stepped = (scale: number, by: 1 | -1): number =>
  Math.min(MOST, Math.max(LEAST, by > 0 ? scale * STEP : scale / STEP))

/** Width in CSS pixels. */
export const shownWidth = (page: PageRow, scale: number): number => page.w * PX_PER_MM * scale
