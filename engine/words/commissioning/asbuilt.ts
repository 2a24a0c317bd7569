import { differencesOf } from '../../edit/benchfacts'
import type { Design } from '../../model/design'
import { conductorById } from '../../model/lookup'
import { listed } from '../names'

/** Tests are made from the drawing: which conductors were built otherwise, and what that means; empty where none was. */
export function builtOtherwiseWords(design: Design): string {
  const ids = new Set(differencesOf(design).map((d) => d.conductor))
  if (ids.size === 0) return ''
  const who = listed(
    [...ids].map((id) => conductorById(design, id)?.number ?? id),
    12,
  )
  return `Built otherwise than drawn: ${who}. Sizes and expected figures here are those of the drawing; draw it as built first, or judge with care.`
}
