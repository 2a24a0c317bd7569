import type { EditOf } from '../../edit/edit'
import { kindOf } from '../../kinds/all'
import type { Design, Part, PartId } from '../../model/design'
import type { Field, NumberField } from '../../model/fields'
import { complete, isRows } from '../../model/values'
import type { Amps } from '../../units'

/** One fuse or breaker whose rating is a field: a part of its own, or a way of a block. */
export interface FuseWay {
  /** Branch id of the network: `${part}/${way}`. */
  readonly id: string
  readonly part: Part
  readonly way: string
  readonly ratingA: Amps | null
  /** Standard ratings of its class that its holder takes, smallest first. */
  readonly ratings: readonly Amps[]
  /** The rating is the designer's own choice. False where none is chosen. */
  readonly locked: boolean
}

/** Branch of a part that is one fuse. */
export const SINGLE = 'link'

/** Every rated fuse and breaker of the parts named. */
export function fuseWays(design: Design, isNamed: (part: PartId) => boolean): FuseWay[] {
  return design.parts.flatMap((part) => (isNamed(part.id) ? waysOf(part) : []))
}

function waysOf(part: Part): FuseWay[] {
  const kind = kindOf(part.kind)
  if (!kind) return []
  const values = complete(kind.fields, part.values)
  const { ways } = values
  const most = typeof values.wayMaxA === 'number' ? values.wayMaxA : Number.POSITIVE_INFINITY
  const wayOf = (way: string, field: NumberField | null, rating: unknown, locked: unknown): FuseWay[] =>
    field?.standard
      ? [
          {
            id: `${part.id}/${way}`,
            part,
            way,
            ratingA: typeof rating === 'number' ? rating : null,
            ratings: field.standard.filter((amps) => amps <= most),
            locked: typeof rating === 'number' && locked === true,
          },
        ]
      : []
  if (ways !== undefined && isRows(ways))
    return ways.flatMap((row, i) => wayOf(`${i + 1}`, ratingField(kind.fields.ways), row.ratingA, row.locked))
  return kind.fields.class && kind.fields.fullDuty
    ? wayOf(SINGLE, ratingField(kind.fields.ratingA), values.ratingA, values.ratingLocked)
    : []
}

function ratingField(field: Field | undefined): NumberField | null {
  const of = field?.type === 'rows' ? field.columns.ratingA : field
  return of?.type === 'number' ? of : null
}

/** One edit a part. */
export function ratingEdits(design: Design, ratings: ReadonlyMap<FuseWay, Amps>): EditOf<'value'>[] {
  const byPart = new Map<PartId, [FuseWay, Amps][]>()
  for (const [way, amps] of ratings)
    if (way.ratingA !== amps) byPart.set(way.part.id, [...(byPart.get(way.part.id) ?? []), [way, amps]])
  return design.parts.flatMap((part): EditOf<'value'>[] => {
    const chosen = byPart.get(part.id)
    if (!chosen) return []
    const first = chosen[0]!
    if (first[0].way === SINGLE) return [{ do: 'value', part: part.id, field: 'ratingA', value: first[1] }]
    const { ways } = complete(kindOf(part.kind)!.fields, part.values)
    const of = new Map(chosen.map(([way, amps]) => [way.way, amps]))
    const value = (ways !== undefined && isRows(ways) ? ways : []).map((row, i) => {
      const ratingA = of.get(`${i + 1}`)
      return ratingA === undefined ? row : { ...row, ratingA }
    })
    return [{ do: 'value', part: part.id, field: 'ways', value }]
  })
}
