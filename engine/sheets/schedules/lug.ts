import type { Conductor, TerminalRef } from '../../model/design'
import type { Size } from '../../tables/sizes'
import { sizeByKey } from '../../tables/sizes'
import type { Nature } from '../nature'
import type { End } from './ends'
import type { NotKnown } from './schedule'

/** What is crimped on one end of a conductor. */
export interface Lug {
  readonly size: Size
  /** "M8", "blade 6.3". */
  readonly stud: string
}

export const NO_SIZE: NotKnown = { notKnown: 'the size is not chosen' }
export const NO_LENGTH: NotKnown = { notKnown: 'the length is not measured' }
const NO_STUD: NotKnown = { notKnown: 'no stud or screw is stated for the terminal: see the part at hand' }

/** null: nothing is crimped here, as data leads come made up and mains is not ours to make. */
export function lugAt(c: Conductor, end: End, nature: Nature): Lug | NotKnown | null {
  if (nature === 'data' || nature === 'mains') return null
  if (end.stud === null) return NO_STUD
  const size = sizeOf(c)
  return 'notKnown' in size ? size : { size, stud: end.stud }
}

/** "16 mm² × M8". */
export function lugCell(lug: Lug | NotKnown | null): string | NotKnown {
  if (lug === null) return ''
  return 'notKnown' in lug ? lug : `${lug.size.name} × ${lug.stud}`
}

export function sizeOf(c: Conductor): Size | NotKnown {
  if (c.size === null) return NO_SIZE
  return sizeByKey(c.size) ?? { notKnown: `the size "${c.size}" is not in the tables` }
}

/** Diameter that a sleeve has to go over, mm. null: no sleeve, as for a lug. */
export function sleeveOver(c: Conductor, nature: Nature): number | NotKnown | null {
  if (nature === 'data' || nature === 'mains') return null
  const size = sizeOf(c)
  if ('notKnown' in size) return size
  return size.overallMm ?? { notKnown: 'the tables have no diameter over the insulation for this size' }
}

/** Both ends of a conductor, `from` first. */
export const endsOf = ({ from, to }: Conductor): readonly TerminalRef[] => [from, to]
