import { askOnce } from './once'
import type { PrintWish } from './print.worker'

/** Makes the PDF in a worker of its own, loaded when first asked for. */
export const printPdf = (wish: PrintWish): Promise<Uint8Array> =>
  askOnce(new Worker(new URL('./print.worker.ts', import.meta.url), { type: 'module' }), wish)
