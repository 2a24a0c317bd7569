import { type Difference, differencesOf } from '../edit/benchfacts'
import { takeOverEdit } from '../edit/benchtake'
import type { Design } from '../model/design'
import { conductorById } from '../model/lookup'
import { sizeIn } from '../model/sizes'
import type { Finding, Level } from './finding'
import { found, type Rule } from './rule'

/**
 * A1: the workshop has built a conductor otherwise than it is drawn. Every other check speaks of the drawing; those of the
 * design as built stand in `builtFindings`.
 */
export const builtOtherwise: Rule = {
  id: 'A1',
  looksFor: 'conductors that the workshop has built otherwise than drawn',
  check: ({ design }) => differencesOf(design).map((d) => findingOf(design, d)),
}

function findingOf(design: Design, d: Difference): Finding {
  const thinner = isThinner(design, d)
  const level: Level = thinner || d.what === 'from' || d.what === 'to' ? 'warning' : 'note'
  const number = conductorById(design, d.conductor)!.number
  return found(
    'A1',
    level,
    'method',
    { conductors: [d.conductor] },
    { conductor: d.conductor, what: d.what, drawn: textOf(d.drawn), built: textOf(d.built), thinner },
    {
      about: d.what,
      ...figuresOf(design, d),
      ...(d.stands ? { fix: { title: `Draw ${number} as it was built`, edit: takeOverEdit(d) } } : {}),
    },
  )
}

/** A size that is not known here counts as thinner: nothing speaks for it. */
export function isThinner(design: Design, { what, drawn, built }: Difference): boolean {
  if (what !== 'size' || drawn === null) return false
  const [before, now] = [sizeIn(design, String(drawn)), sizeIn(design, String(built))]
  return before !== undefined && (now === undefined || now.sectionMm2 < before.sectionMm2)
}

function figuresOf(design: Design, { what, drawn, built }: Difference): Pick<Finding, 'actual' | 'limit'> {
  if (what === 'lengthM')
    return {
      actual: { value: Number(built), unit: 'm' },
      ...(drawn === null ? {} : { limit: { value: Number(drawn), unit: 'm' } }),
    }
  if (what !== 'size') return {}
  const [before, now] = [sizeIn(design, drawn === null ? null : String(drawn)), sizeIn(design, String(built))]
  return {
    ...(now ? { actual: { value: now.sectionMm2, unit: 'mm²' } } : {}),
    ...(before ? { limit: { value: before.sectionMm2, unit: 'mm²' } } : {}),
  }
}

/** A terminal as "part/terminal". */
const textOf = (value: Difference['drawn']): string =>
  typeof value === 'object' && value !== null ? `${value.part}/${value.terminal}` : String(value ?? '')
