import { type RefObject, useEffect } from 'react'
import { useReactFlow } from 'reactflow'
import { partById } from '../../engine'
import { useHand, useMotion } from '../store/hand'
import { seenDesign } from '../store/seen'
import { PX } from './scale'

/**
 * Parts under the hand are moved by their elements alone: nothing is drawn again with a step of the hand. A cover over
 * the sheet keeps the page from asking at each step what lies under the pointer.
 */
export function useCarrying(box: RefObject<HTMLDivElement | null>): void {
  const flow = useReactFlow()
  useEffect(() => {
    let held = useHand.getState().parts
    let elements = new Map<string, HTMLElement>()
    const place = () => {
      const { parts } = useHand.getState()
      const { by } = useMotion.getState()
      if (parts !== held) {
        for (const [id, element] of elements) {
          const at = parts.has(id) ? undefined : flow.getNode(id)?.position
          if (at) element.style.transform = `translate(${at.x}px,${at.y}px)`
        }
        elements = elementsOf(box.current, parts)
        held = parts
      }
      for (const [id, element] of elements) move(element, id, by[0], by[1])
    }
    const cover = () => {
      const { parts, conductor } = useHand.getState()
      box.current?.toggleAttribute('data-carrying', parts.size > 0 || conductor !== null)
      place()
    }
    const unwatch = [useMotion.subscribe(place), useHand.subscribe(cover)]
    return () => {
      for (const stop of unwatch) stop()
    }
  }, [box, flow])
}

function elementsOf(box: HTMLElement | null, parts: ReadonlySet<string>): Map<string, HTMLElement> {
  const elements = new Map<string, HTMLElement>()
  for (const element of box?.querySelectorAll<HTMLElement>('.react-flow__node') ?? []) {
    const { id } = element.dataset
    if (id !== undefined && parts.has(id)) elements.set(id, element)
  }
  return elements
}

function move(element: HTMLElement, id: string, dx: number, dy: number): void {
  const part = partById(seenDesign(), id)
  if (part) element.style.transform = `translate(${(part.x + dx) * PX}px,${(part.y + dy) * PX}px)`
}
