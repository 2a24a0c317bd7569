import { memo } from 'react'
import type { Conductor } from '../../engine'
import { useHand } from '../store/hand'
import { RunDrawing } from './RunDrawing'

/** A conductor in the drawing at rest; while the hand moves it, it is drawn among what is carried. */
export const ConductorLine = memo(function ConductorLine({ conductor }: { conductor: Conductor }) {
  const { id, from, to } = conductor
  const carried = useHand(
    ({ parts, conductor: held }) => held === id || parts.has(from.part) || parts.has(to.part),
  )
  return carried ? null : <RunDrawing conductor={conductor} />
})
