import type { Scene } from '../../engine'
import { pictureOf } from '../symbols/picture'

const WIDTH = 320
const HEIGHT = 200

/** A small PNG of the drawing; null where the browser cannot paint it. */
export async function thumbnailOf(scene: Scene): Promise<Blob | null> {
  const url = URL.createObjectURL(new Blob([pictureOf(scene, WIDTH, HEIGHT)], { type: 'image/svg+xml' }))
  try {
    const image = new Image(WIDTH, HEIGHT)
    image.src = url
    await image.decode()
    const canvas = document.createElement('canvas')
    canvas.width = WIDTH
    canvas.height = HEIGHT
    canvas.getContext('2d')?.drawImage(image, 0, 0, WIDTH, HEIGHT)
    return await new Promise((resolve) => canvas.toBlob(resolve, 'image/png'))
  } catch {
    return null
  } finally {
    URL.revokeObjectURL(url)
  }
}
