import { type ReadResult, readDesign as readDesignWith } from '../model/read'
import { kindOf } from './all'

/** Text of a design file to a design and its problems, with the part kinds of this version. Never throws. */
export const readDesign = (text: string): ReadResult => readDesignWith(text, kindOf)
