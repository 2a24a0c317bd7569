import { useMemo } from 'react'
import { type ConductorId, kindOf, type PartId, partById } from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { useView } from '../store/view'
import { guardedBy, guardsOf } from './guards'
import { seenThrough } from './lens'
import type { Painted } from './look'

/** How the lens that is on shows a line; null: no lens, or nothing is known yet. */
export function usePainted(id: ConductorId, withReturn: ConductorId | null): Painted | null {
  const lens = useView((s) => s.lens)
  const answers = useLatest((s) => s.answers)
  const guarded = useGuarded()
  return useMemo(
    () =>
      lens && answers
        ? seenThrough(lens, answers, withReturn === null ? [id] : [id, withReturn], guarded)
        : null,
    [lens, answers, id, withReturn, guarded],
  )
}

const NOTHING: ReadonlySet<ConductorId> = new Set()

/** What the device guards that is pointed at, else the one that is selected; null: no device is meant. */
export function useGuarded(): ReadonlySet<ConductorId> | null {
  const on = useView((s) => s.lens === 'protection')
  const part = useView(
    (s) => s.pointed ?? (s.parts.size === 1 && s.conductors.size === 0 ? [...s.parts][0]! : null),
  )
  const runs = useLatest((s) => s.answers?.runs)
  const guards = useOpen((s) => isGuard(part && partById(s.design, part)?.kind))
  if (!on || part === null || !runs) return null
  return guardedBy(runs).get(part) ?? (guards ? NOTHING : null)
}

const isGuard = (kind: string | null | undefined): boolean => !!kind && kindOf(kind)?.group === 'protection'

/** Does this part guard a selected conductor? */
export function useGuarding(part: PartId): boolean {
  const run = useView((s) =>
    s.lens === 'protection' && s.conductors.size === 1 ? [...s.conductors][0]! : null,
  )
  const answer = useLatest((s) => (run === null ? undefined : s.answers?.runs.get(run)))
  return useMemo(() => answer !== undefined && guardsOf(answer).some((g) => g.part === part), [answer, part])
}
