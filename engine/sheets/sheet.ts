import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import type { Area } from './paper'

/** A sheet ready to be painted: marks in millimetres from its top left corner; nothing is measured or moved any more. */
export interface Sheet {
  readonly title: string
  readonly w: Millimetres
  readonly h: Millimetres
  readonly marks: readonly Mark[]
  /** Places that lead to another sheet, by its index. */
  readonly links: readonly SheetLink[]
}

export interface SheetLink extends Area {
  readonly sheet: number
  /** Key of another section of the same pack in which `sheet` counts; where the pack lacks it the link leads nowhere. */
  readonly section?: string
  /** Where the number of the page that it leads to is to be printed, ending there, and how high. */
  readonly number?: { readonly at: readonly [Millimetres, Millimetres]; readonly height: Millimetres }
}
