import { BENCH_BOUNDS } from '../../../engine'

/** Longer side of a photo as it is kept, px. */
const SIDE = 640
const QUALITIES = [0.75, 0.6, 0.45, 0.3, 0.2]

/**
 * A picture made small: at most 640 px and 60 kB of JPEG, as base64. Throws where the file is no picture that this
 * browser reads.
 */
export async function smallJpeg(file: Blob): Promise<string> {
  const picture = await createImageBitmap(file)
  for (let side = SIDE; side >= 160; side /= 2) {
    const scale = Math.min(1, side / Math.max(picture.width, picture.height))
    const canvas = document.createElement('canvas')
    canvas.width = Math.max(1, Math.round(picture.width * scale))
    canvas.height = Math.max(1, Math.round(picture.height * scale))
    const pen = canvas.getContext('2d')
    if (!pen) throw new Error('This browser cannot make a picture smaller.')
    pen.fillStyle = '#fff'
    pen.fillRect(0, 0, canvas.width, canvas.height)
    pen.drawImage(picture, 0, 0, canvas.width, canvas.height)
    for (const quality of QUALITIES) {
      const text = canvas.toDataURL('image/jpeg', quality).split(',')[1] ?? ''
      if (text.length > 0 && text.length <= BENCH_BOUNDS.jpeg) return text
    }
  }
  throw new Error('The picture could not be made small enough.')
}

export const photoUrl = (jpeg: string): string => `data:image/jpeg;base64,${jpeg}`

/** What letters of base64 take in the design file: "41 kB". */
export const kilobytes = (letters: number): string => `${Math.max(1, Math.round(letters / 1000))} kB`
