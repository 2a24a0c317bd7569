import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { useView } from '../store/view'

/** Is a newer layout still under way? */
export function useBusy(): boolean {
  const design = useOpen((s) => s.design)
  const view = useView((s) => s.view)
  return useLatest((s) => s.laidOut !== design || s.checked !== design || s.scene?.view !== view)
}
