import { useEffect } from 'react'
import { turnTo, useMaking } from './making'

/** Larger, smaller, or the whole page. */
type ZoomBy = (by: 1 | -1 | 0) => void

/** Turns pages and zooms by keys, wherever the focus is but in a field. */
export function usePageKeys(zoom: ZoomBy): void {
  useEffect(() => {
    const onKey = (e: KeyboardEvent) => {
      if (e.altKey || e.ctrlKey || e.metaKey || document.querySelector('[role="dialog"]')) return
      if (takesKey(e.target as HTMLElement, e.key)) return
      if (turn(e.key) || zoomed(e.key, zoom)) e.preventDefault()
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [zoom])
}

/** A field that is typed in; one that is chosen among others takes the arrow keys. */
const takesKey = (target: HTMLElement, key: string): boolean =>
  target.closest('select, textarea') !== null ||
  (target instanceof HTMLInputElement &&
    target.type !== 'checkbox' &&
    (target.type !== 'radio' || key.startsWith('Arrow')))

function turn(key: string): boolean {
  const { page, pack } = useMaking.getState()
  if (key === 'PageDown' || key === 'ArrowRight') turnTo(page + 1)
  else if (key === 'PageUp' || key === 'ArrowLeft') turnTo(page - 1)
  else if (key === 'Home') turnTo(0)
  else if (key === 'End') turnTo((pack?.pages.length ?? 1) - 1)
  else return false
  return true
}

function zoomed(key: string, zoom: ZoomBy): boolean {
  if (key === '+') zoom(1)
  else if (key === '-') zoom(-1)
  else if (key === '0') zoom(0)
  else return false
  return true
}
