import {
  type Answers,
  type Design,
  type Finding,
  type SchematicOptions,
  schematicSheets,
  writeDesign,
} from '../../engine'
import type { Colouring } from './inks'
import { type Fonts, pdfOf } from './pdf'

export interface PrintOptions extends SchematicOptions {
  readonly fonts: Fonts
  /** Default 'colour'. 'black': every ink prints black. */
  readonly colouring?: Colouring
}

/** The schematic as a PDF with the design file inside. The same design, answers and date give the same bytes. */
export function schematicPdf(
  design: Design,
  answers: Answers | null,
  findings: readonly Finding[],
  { fonts, colouring = 'colour', ...options }: PrintOptions,
): Uint8Array {
  const { settings } = design
  return pdfOf(
    schematicSheets(design, answers, findings, options),
    {
      title: settings.name === '' ? 'Wiring diagram' : settings.name,
      author: settings.designer,
      subject: [settings.vehicle, settings.revision === '' ? '' : `revision ${settings.revision}`]
        .filter((s) => s !== '')
        .join(', '),
      date: options.date ?? settings.date,
      colouring,
      attachment: {
        name: 'design.loomwright.json',
        bytes: new TextEncoder().encode(writeDesign(design)),
        mime: 'application/json',
      },
    },
    fonts,
  )
}
