import { type Making, USUAL_MAKING } from '../tables/making'
import type { Design } from './design'

/** How conductors of this design are made up. */
export const makingOf = (design: Design): Making => design.making ?? USUAL_MAKING

/** Where the allowance comes from, for the note under a schedule. */
export const allowanceSource = (design: Design): string =>
  design.making ? "the workshop's own figure" : 'common practice, no source'
