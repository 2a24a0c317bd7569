import type { Control, OperatingState } from '../../engine'
import { put } from './trial'

/** One slider for the sun on all arrays. It shows the most that one of them gets. */
export function AllSun({ members, state }: { members: readonly Control[]; state: OperatingState }) {
  const most = Math.max(...members.map(({ id }) => state.sources.get(id) ?? 0))
  return (
    <label className="all-sun">
      <span>Sun on all arrays</span>
      <input
        type="range"
        min={0}
        max={100}
        step={5}
        value={Math.round(most * 100)}
        onChange={(e) => {
          const share = Number(e.target.value) / 100
          put(...members.map(({ id }) => ({ set: 'source' as const, id, share })))
        }}
      />
    </label>
  )
}
