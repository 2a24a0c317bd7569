import type { Scene } from '../../engine'
import { useLatest } from '../store/latest'
import { keepThumbnail } from './kept'
import { thumbnailOf } from './thumbnail'

const CALM_MS = 1500

/** Makes the picture of a kept design once its drawing has been calm for a while, or when another design comes. */
export function startThumbnails(): () => void {
  let waiting: { readonly id: string; readonly scene: Scene } | null = null
  let timer: ReturnType<typeof setTimeout> | undefined

  const make = async () => {
    clearTimeout(timer)
    const wish = waiting
    waiting = null
    const picture = wish && (await thumbnailOf(wish.scene))
    // A browser that cannot keep it shows an empty tile in the list.
    if (picture) await keepThumbnail(wish.id, picture).catch(() => {})
  }

  return useLatest.subscribe(({ scene, laidOut }, before) => {
    if (scene === before.scene || !scene || !laidOut) return
    if (waiting && waiting.id !== laidOut.id) void make()
    waiting = { id: laidOut.id, scene }
    clearTimeout(timer)
    timer = setTimeout(() => void make(), CALM_MS)
  })
}
