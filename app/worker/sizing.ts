import type { Sizing } from '../../engine'
import { askOnce } from './once'
import type { SizingWish } from './sizing.worker'

/** Chooses sizes and ratings in a worker of its own. */
export const chooseSizes = (wish: SizingWish): Promise<Sizing> =>
  askOnce(new Worker(new URL('./sizing.worker.ts', import.meta.url), { type: 'module' }), wish)
