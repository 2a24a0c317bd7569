import type { Compared, CompareWish } from './compare.worker'
import { askOnce } from './once'

/** Compares two states in a worker of its own: both are checked and laid out afresh. */
export const compareStates = (wish: CompareWish): Promise<Compared> =>
  askOnce(new Worker(new URL('./compare.worker.ts', import.meta.url), { type: 'module' }), wish)
