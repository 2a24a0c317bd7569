import { type Design, readDesign, writeDesign } from '../../engine'
import { fetchKept } from './kept'
import { keepPoint } from './points'

/**
 * Before a file takes the place of a design that this browser keeps under the same id, what is kept becomes an earlier
 * state of it. True: something else was kept, and can be gone back to.
 */
export async function keepBefore(design: Design, file: string): Promise<boolean> {
  const kept = await fetchKept(design.id).catch(() => undefined)
  const before = kept && readDesign(kept.text).design
  if (!before || writeDesign(before) === writeDesign(design)) return false
  return keepPoint(before, `Before ${file} was opened`).then(
    () => true,
    () => false,
  )
}
