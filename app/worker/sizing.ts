import { askOnce } from './once'
import type { SizingOutcome, SizingWish } from './sizing.worker'

/** Chooses sizes and ratings in a worker of its own, and checks the design as it would then be. */
export const chooseSizes = (wish: SizingWish): Promise<SizingOutcome> =>
  askOnce(new Worker(new URL('./sizing.worker.ts', import.meta.url), { type: 'module' }), wish)
