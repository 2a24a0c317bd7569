import { useRef } from 'react'
import { useStore } from 'reactflow'
import { letteringZoom } from './density'

/** The zoom that words are lettered for; it changes in steps, and only then is anything drawn again. */
export function useLettering(): number {
  const kept = useRef<number | null>(null)
  return useStore((s) => {
    kept.current = letteringZoom(s.transform[2], kept.current)
    return kept.current
  })
}
