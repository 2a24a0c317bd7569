import { useMemo } from 'react'
import type { ConductorId } from '../../engine'
import { useView } from '../store/view'
import { type Flow, flowOf } from './flow'
import { useTrial } from './trial'

/** What a line carries while the design is tried out; null: it is not, or there is no operating point. */
export function useFlow(id: ConductorId, withReturn: ConductorId | null): Flow | null {
  const trying = useView((s) => s.trying)
  const point = useTrial((s) => s.trial?.point)
  return useMemo(
    () => (trying && point?.ok ? flowOf(point, id, withReturn) : null),
    [trying, point, id, withReturn],
  )
}
