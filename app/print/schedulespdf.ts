import {
  type Answers,
  type Design,
  type ScheduleSheetOptions,
  scheduleSheets,
  writeDesign,
} from '../../engine'
import type { Colouring } from './inks'
import { type Fonts, pdfOf } from './pdf'

export interface SchedulePrintOptions extends ScheduleSheetOptions {
  readonly fonts: Fonts
  /** Default 'colour'. 'black': every ink prints black. */
  readonly colouring?: Colouring
}

/** Every schedule of a design as a PDF with the design file inside. The same design and date give the same bytes. */
export function schedulesPdf(
  design: Design,
  answers: Answers,
  { fonts, colouring = 'colour', ...options }: SchedulePrintOptions,
): Uint8Array {
  const { settings } = design
  return pdfOf(
    scheduleSheets(design, answers, options),
    {
      title: settings.name === '' ? 'Workshop schedules' : `${settings.name}: workshop schedules`,
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
