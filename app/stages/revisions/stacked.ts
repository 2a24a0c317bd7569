import { type RefObject, useEffect, useRef, useState } from 'react'
import type { Frame } from './window'

/** Whether two drawings of this form are larger one above the other than beside one another in the room there is. */
export function useStacked({ w, h }: Frame): readonly [RefObject<HTMLElement | null>, boolean] {
  const table = useRef<HTMLElement>(null)
  const [stacked, setStacked] = useState(false)
  useEffect(() => {
    const at = table.current
    if (!at) return
    const watch = new ResizeObserver(() => {
      const [width, height] = [at.clientWidth, at.clientHeight]
      setStacked(Math.min(width / w, height / 2 / h) > Math.min(width / 2 / w, height / h))
    })
    watch.observe(at)
    return () => watch.disconnect()
  }, [w, h])
  return [table, stacked]
}
