import { kindOf } from '../kinds/all'
import { boxOf } from '../kinds/place'
import type { Design, Part } from '../model/design'
import { namingFor } from '../model/naming'
import { initialValues } from '../model/values'
import type { Millimetres } from '../units'
import type { EditOf } from './edit'
import { snap } from './grid'

/** Adds a part of a kind with its middle at a place, under a new id and designation. Throws for an unknown kind. */
export function addPartEdit(
  design: Design,
  kindKey: string,
  at: { readonly x: Millimetres; readonly y: Millimetres },
): EditOf<'add'> {
  const kind = kindOf(kindKey)
  if (!kind) throw new RangeError(`There is no part kind "${kindKey}"`)
  const naming = namingFor(design)
  const part: Part = {
    id: naming.partId(),
    kind: kind.key,
    designation: naming.designation(kind.letter),
    name: '',
    location: '',
    x: 0,
    y: 0,
    turn: 0,
    mirrored: false,
    values: initialValues(kind.fields),
  }
  const { w, h } = boxOf(part)
  return { do: 'add', parts: [{ ...part, x: snap(at.x - w / 2), y: snap(at.y - h / 2) }], conductors: [] }
}
