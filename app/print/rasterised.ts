import { binary } from './attach'
import type { Fonts } from './pdf'
import { pixelsOf } from './pixels'

/** A sheet, given as SVG with its size in millimetres, as PNG at 200 dots an inch, in the product's typeface. */
export async function rasterised(
  svg: string,
  { w, h }: { readonly w: number; readonly h: number },
  fonts: Fonts,
): Promise<Blob> {
  const url = URL.createObjectURL(new Blob([withFonts(svg, fonts)], { type: 'image/svg+xml' }))
  try {
    const picture = new Image()
    picture.src = url
    await picture.decode()
    const canvas = document.createElement('canvas')
    canvas.width = pixelsOf(w)
    canvas.height = pixelsOf(h)
    canvas.getContext('2d')!.drawImage(picture, 0, 0, canvas.width, canvas.height)
    return await new Promise<Blob>((resolve, reject) =>
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('the picture is too large')))),
    )
  } finally {
    URL.revokeObjectURL(url)
  }
}

/** A picture of its own cannot reach the fonts of the page: they go inside. */
function withFonts(svg: string, { regular, bold }: Fonts): string {
  const face = (bytes: Uint8Array, weight: number) =>
    `@font-face{font-family:"IBM Plex Sans Condensed";font-weight:${weight};src:url(data:font/ttf;base64,${btoa(binary(bytes))})}`
  return svg.replace('<title>', `<style>${face(regular, 400)}${face(bold, 600)}</style><title>`)
}
