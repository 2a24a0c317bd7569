import type { Design, Pack } from '../../engine'
import { designPdf } from './designpdf'
import type { Colouring } from './inks'
import type { Fonts } from './pdf'

/** A pack as a PDF with nested bookmarks, links and the design file inside. The same design gives the same bytes. */
export const packPdf = (
  design: Design,
  { title, sheets, bookmarks }: Pack,
  look: { readonly fonts: Fonts; readonly colouring: Colouring },
): Uint8Array => designPdf(design, sheets, { title, bookmarks, ...look })
