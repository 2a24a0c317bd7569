import { create } from 'zustand'
import { BENCH_ORDERS, type BenchOrder, type ConductorId } from '../../../engine'
import { readPreference, writePreference } from '../../files/preference'

/** What is in front of the worker. On a narrow screen one of them at a time. */
export type BenchView = 'conductor' | 'list' | 'otherwise'

interface LookingState {
  readonly order: BenchOrder
  readonly view: BenchView
  /** The conductor in hand; null: the next one that is not finished. */
  readonly at: ConductorId | null
}

const keptOrder = (): BenchOrder => {
  const kept = readPreference('bench-order')
  return kept !== null && Object.hasOwn(BENCH_ORDERS, kept) ? (kept as BenchOrder) : 'part'
}

export const useLooking = create<LookingState>(() => ({ order: keptOrder(), view: 'conductor', at: null }))

const set = useLooking.setState

export function chooseOrder(order: BenchOrder): void {
  writePreference('bench-order', order)
  set({ order })
}
export const showView = (view: BenchView) => set({ view })
export const takeUp = (at: ConductorId) => set({ at, view: 'conductor' })
