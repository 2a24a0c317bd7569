import regular from '@expo-google-fonts/ibm-plex-sans-condensed/400Regular/IBMPlexSansCondensed_400Regular.ttf?url'
import bold from '@expo-google-fonts/ibm-plex-sans-condensed/600SemiBold/IBMPlexSansCondensed_600SemiBold.ttf?url'
import { analyse, type Design, type SchematicOptions } from '../../engine'
import { schematicPdf } from '../print/schematicpdf'
import { serve } from './serve'

export interface PrintWish {
  readonly design: Design
  readonly options: SchematicOptions
  readonly colouring: 'colour' | 'black'
}

const read = async (url: string) => new Uint8Array(await (await fetch(url)).arrayBuffer())
const fonts = Promise.all([read(regular), read(bold)])

/** Paper is worked out from the design afresh: it never shows figures of an older one. */
serve<PrintWish, Uint8Array>(async ({ design, options, colouring }) => {
  const [regularBytes, boldBytes] = await fonts
  const { answers, findings } = analyse(design)
  return schematicPdf(design, answers, findings, {
    ...options,
    colouring,
    fonts: { regular: regularBytes, bold: boldBytes },
  })
})
