import type { Design, TestStep } from '../../engine'
import { askOnce } from './once'

/** Works the commissioning steps out beside the page: some hundred load flows. */
export const stepsOf = (design: Design): Promise<readonly TestStep[]> =>
  askOnce(new Worker(new URL('./commissioning.worker.ts', import.meta.url), { type: 'module' }), design)
