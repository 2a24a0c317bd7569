import { Resvg } from '@resvg/resvg-js'
import { PNG_DPI, pixelsOf } from '../print/pixels'
import { fontFiles } from './fonts'

/** A sheet, given as SVG and by its width in millimetres, as PNG at 200 dots an inch, in the product's typeface. */
export function sheetPng(svg: string, widthMm: number): Uint8Array {
  const { regular, bold } = fontFiles()
  const picture = new Resvg(svg, {
    dpi: PNG_DPI,
    fitTo: { mode: 'width', value: pixelsOf(widthMm) },
    font: {
      fontFiles: [regular, bold],
      loadSystemFonts: false,
      defaultFontFamily: 'IBM Plex Sans Condensed',
    },
  })
  return picture.render().asPng()
}
