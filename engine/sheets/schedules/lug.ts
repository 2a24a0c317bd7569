import type { Conductor, Design, TerminalRef } from '../../model/design'
import { sizeIn } from '../../model/sizes'
import { fittingOf } from '../../tables/fittings'
import type { Size } from '../../tables/sizes'
import type { Nature } from '../nature'
import type { End } from './ends'
import type { NotKnown } from './schedule'

/** What is made up on one end of a conductor. */
export interface Lug {
  readonly size: Size
  /** Form of the terminal; null: the part does not state it. */
  readonly form: string | null
}

export const NO_SIZE: NotKnown = { notKnown: 'the size is not chosen' }
export const NO_LENGTH: NotKnown = { notKnown: 'the length is not measured' }
export const NOT_STATED = 'not stated'

/** null: nothing is crimped here, as data leads come made up and mains is not ours to make. */
export function lugAt(design: Design, c: Conductor, end: End, nature: Nature): Lug | NotKnown | null {
  if (nature === 'data' || nature === 'mains') return null
  const size = sizeOf(design, c)
  return 'notKnown' in size ? size : { size, form: end.stud }
}

/** "16 mm² × M8", "2.5 mm² push-on 6.3", "1 mm² ferrule". */
export function lugCell(lug: Lug | NotKnown | null): string | NotKnown {
  if (lug === null) return ''
  if ('notKnown' in lug) return lug
  if (lug.form === null) return NOT_STATED
  return `${lug.size.name} ${fittingOf(lug.form)?.short ?? `× ${lug.form}`}`
}

export function sizeOf(design: Design, c: Conductor): Size | NotKnown {
  if (c.size === null) return NO_SIZE
  return sizeIn(design, c.size) ?? { notKnown: `the size "${c.size}" is not in the tables` }
}

/** Diameter that a sleeve has to go over, mm. null: no sleeve, as for a lug. */
export function sleeveOver(design: Design, c: Conductor, nature: Nature): number | NotKnown | null {
  if (nature === 'data' || nature === 'mains') return null
  const size = sizeOf(design, c)
  if ('notKnown' in size) return size
  return size.overallMm ?? { notKnown: 'the tables have no diameter over the insulation for this size' }
}

/** Both ends of a conductor, `from` first. */
export const endsOf = ({ from, to }: Conductor): readonly TerminalRef[] => [from, to]
