import { type RefObject, useLayoutEffect } from 'react'
import { useLettering } from './lettering'

/** A zoom at which patterns are told as they are. */
const PLAIN_ZOOM = 0.9
/** How much coarser they are drawn at most. */
const MOST = 3

/** How much coarser than at full size patterns are drawn at a zoom. */
export const coarseness = (zoom: number): number => Math.min(MOST, Math.max(1, PLAIN_ZOOM / zoom))

/** Tells the styles of the sheet how much coarser patterns are to be drawn. */
export function useCoarse(box: RefObject<HTMLDivElement | null>): void {
  const zoom = useLettering()
  useLayoutEffect(() => {
    box.current?.style.setProperty('--coarse', String(coarseness(zoom)))
  }, [box, zoom])
}
