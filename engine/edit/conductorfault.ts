import type { Conductor, Design } from '../model/design'
import { conductorById } from '../model/lookup'
import { RUN_LIMITS } from '../model/runlimits'
import { sizeIn } from '../model/sizes'
import { isColour } from '../tables/colours'
import type { ConductorChange, Refusal } from './edit'
import { FURTHEST } from './grid'
import { refuse } from './refuse'

const { longestM, insulationC: INSULATION_C, mostBunched } = RUN_LIMITS

/** What is wrong with data typed for a conductor, or null. */
export function conductorFault(design: Design, conductor: Conductor, set: ConductorChange): Refusal | null {
  return (
    numberFault(design, conductor, set.number) ??
    feedFault(design, conductor, set.returnOf) ??
    figureFault(design, set) ??
    ownFigureFault(set.designCurrent) ??
    pathFault(set.path) ??
    pathFault(set.pathIn?.['both-poles']) ??
    pathFault(set.pathIn?.data)
  )
}

function numberFault(design: Design, conductor: Conductor, number: string | undefined): Refusal | null {
  if (number === undefined) return null
  if (number.trim() === '') return refuse('number-empty', 'A conductor needs a number, such as W1.')
  const other = design.conductors.some((c) => c.id !== conductor.id && c.number === number)
  return other ? refuse('number-taken', `${number} already numbers another conductor.`) : null
}

function feedFault(design: Design, conductor: Conductor, feed: string | null | undefined): Refusal | null {
  if (feed === undefined || feed === null) return null
  if (feed === conductor.id) return refuse('no-feed', 'A conductor cannot be its own return.')
  return conductorById(design, feed)
    ? null
    : refuse('no-feed', 'The feed of this return is not in the design.')
}

function figureFault(
  design: Design,
  { size, lengthM, colour, insulationC, bunched }: ConductorChange,
): Refusal | null {
  if (size !== undefined && size !== null && !sizeIn(design, size))
    return refuse('no-size', `"${size}" is not in the size catalogue.`)
  if (lengthM !== undefined && lengthM !== null && !(lengthM > 0 && lengthM <= longestM))
    return refuse('length', `A length is more than 0 and at most ${longestM} m.`)
  if (colour !== undefined && !isColour(colour))
    return refuse('colour', `"${colour}" is not made of IEC 60757 colour letters, such as RD or GNYE.`)
  if (
    insulationC !== undefined &&
    insulationC !== null &&
    !(insulationC >= INSULATION_C[0] && insulationC <= INSULATION_C[1])
  )
    return refuse(
      'insulation',
      `The temperature of an insulation lies between ${INSULATION_C[0]} and ${INSULATION_C[1]} °C.`,
    )
  if (bunched !== undefined && !(Number.isInteger(bunched) && bunched >= 1 && bunched <= mostBunched))
    return refuse(
      'bunched',
      `Conductors bunched together are counted with this one: from 1 to ${mostBunched}.`,
    )
  return null
}

function ownFigureFault(own: ConductorChange['designCurrent']): Refusal | null {
  if (own === undefined || own === null) return null
  if (!(own.amps >= 0 && own.amps <= 1e5))
    return refuse('design-current', 'A design current lies between 0 and 100,000 A.')
  return own.reason.trim() === ''
    ? refuse('no-reason', 'A design current of your own needs a written reason; it is printed with it.')
    : null
}

function pathFault(path: ConductorChange['path']): Refusal | null {
  const inside = (at: number): boolean => Math.abs(at) <= FURTHEST
  return path?.every(({ x, y }) => inside(x) && inside(y)) === false
    ? refuse('not-a-place', 'A corner lies outside the drawing.')
    : null
}
