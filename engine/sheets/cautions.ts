import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import { LEAST, textMark } from './block'
import { wrapTo } from './measure'
import { warningSign } from './warningsign'

/** The usual cautions of the trade, on every printed sheet. Common practice, no published source. */
export const CAUTIONS: readonly string[] = [
  'Isolate every source before work: batteries, charger, PV array, mains. A PV array in daylight cannot be switched off: cover or disconnect it.',
  'A battery drives thousands of amps into a short circuit. Insulate tools and terminals; take off rings and watches.',
  'A DC arc does not go out by itself. Break DC only with devices rated for it, and never a PV plug under load.',
  'No sparking devices in gas-locker and battery spaces. Ventilate vented batteries.',
  'Torque terminations to the maker’s figure, and check them again after the first drives.',
  'Everything at mains voltage is for licensed persons only.',
]

/** What the figures on a sheet are and are not. */
export const LAST_WORD =
  'Loomwright says which checks were made, against which figures, and what they found. It does not judge an installation. Local codes and the judgement of a licensed practitioner prevail.'

const PITCH = LEAST * 1.5

/** The cautions in a column of a given width, with the sign for electrical hazard (ISO 7010 W012); from the top left corner. */
export function cautionMarks(width: Millimetres): {
  readonly marks: readonly Mark[]
  readonly h: Millimetres
} {
  const left = 12
  const lines = [
    ...CAUTIONS.flatMap((text) => bulleted(text, width - left - 3)),
    ...wrapTo(width - left, LAST_WORD, LEAST, 'bold').map((text, i) => ({
      text,
      bullet: false,
      gap: i === 0,
      bold: true,
    })),
  ]
  let y = 0
  const marks: Mark[] = [...warningSign(1, 0.5, 9)]
  for (const { text, bullet, gap, bold } of lines) {
    y += gap ? PITCH + 0.9 : PITCH
    if (bullet) marks.push(textMark(left, y, { text: '•' }))
    marks.push(textMark(bold ? left : left + 3, y, { text, ...(bold ? { weight: 'bold' as const } : {}) }))
  }
  return { marks, h: Math.max(y + 1, 10) }
}

const bulleted = (text: string, width: Millimetres) =>
  wrapTo(width, text, LEAST).map((line, i) => ({ text: line, bullet: i === 0, gap: false, bold: false }))
