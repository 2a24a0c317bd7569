import type { Design } from '../../model/design'
import type { ChargeStage } from './charging'
import { planOf } from './plan'
import type { OperatingState } from './state'

/** One change of a state, as data. Shares are 0 to 1; what lies outside is brought to the nearer end. */
export type OperatingChange =
  | { readonly set: 'contact'; readonly id: string; readonly open: boolean }
  | { readonly set: 'throw'; readonly id: string; readonly position: string }
  | { readonly set: 'fuse'; readonly id: string; readonly out: boolean }
  | { readonly set: 'load' | 'source' | 'charge'; readonly id: string; readonly share: number }
  | { readonly set: 'stage'; readonly id: string; readonly stage: ChargeStage }
  /** All loads, or all sources, that the state names. */
  | { readonly set: 'loads' | 'sources'; readonly share: number }

/**
 * The state after a change; the same object where the change changes nothing. Pure. Throws a RangeError on a share
 * that is not a number. What a changed state comes to is `operate`'s to say, and its `state` is the next to change.
 */
export function changed(state: OperatingState, change: OperatingChange): OperatingState {
  switch (change.set) {
    case 'contact':
      return withMember(state, 'open', change.id, change.open)
    case 'fuse':
      return withMember(state, 'blown', change.id, change.out)
    case 'throw':
      return withFigures(state, 'throws', [[change.id, change.position]])
    case 'load':
      return withFigures(state, 'loads', [[change.id, shareOf(change.share)]])
    case 'source':
      return withFigures(state, 'sources', [[change.id, shareOf(change.share)]])
    case 'charge':
      return withFigures(state, 'charge', [[change.id, shareOf(change.share)]])
    case 'stage':
      return { ...state, stages: new Map([...(state.stages ?? []), [change.id, change.stage]]) }
    default: {
      const share = shareOf(change.share)
      return withFigures(
        state,
        change.set,
        [...state[change.set].keys()].map((id) => [id, share]),
      )
    }
  }
}

/**
 * A state for a design that was edited meanwhile: what is new in it as usual, what is gone left out, all else as it
 * was set.
 */
export function carriedOver(state: OperatingState, usual: OperatingState, design: Design): OperatingState {
  const { contacts, border } = planOf(design)
  const known = new Set(contacts.map((c) => c.id))
  const kept = <T>(was: ReadonlyMap<string, T>, now: ReadonlyMap<string, T>): Map<string, T> =>
    new Map([...now].map(([id, value]) => [id, was.get(id) ?? value]))
  return {
    open: new Set([...state.open].filter((id) => known.has(id))),
    blown: new Set([...state.blown].filter((id) => border.branches.has(id))),
    throws: kept(state.throws, usual.throws),
    loads: kept(state.loads, usual.loads),
    sources: kept(state.sources, usual.sources),
    charge: kept(state.charge, usual.charge),
    ...(state.stages ? { stages: new Map([...state.stages].filter(([id]) => border.devices.has(id))) } : {}),
  }
}

function shareOf(share: number): number {
  if (Number.isNaN(share)) throw new RangeError('a share of use is not a number')
  return Math.min(1, Math.max(0, share))
}

function withMember(
  state: OperatingState,
  of: 'open' | 'blown',
  id: string,
  member: boolean,
): OperatingState {
  if (state[of].has(id) === member) return state
  const next = new Set(state[of])
  if (!next.delete(id)) next.add(id)
  return { ...state, [of]: next }
}

function withFigures<K extends 'throws' | 'loads' | 'sources' | 'charge'>(
  state: OperatingState,
  of: K,
  figures: readonly (readonly [string, string | number])[],
): OperatingState {
  const was: ReadonlyMap<string, string | number> = state[of]
  if (figures.every(([id, figure]) => was.get(id) === figure)) return state
  return { ...state, [of]: new Map([...was, ...figures]) }
}
