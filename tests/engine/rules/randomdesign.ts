import { KINDS, kindOf } from '../../../engine/kinds/all'
import type { Conductor, Design, Part, TerminalRef } from '../../../engine/model/design'
import type { Cell, CellField, Field, Value, Values } from '../../../engine/model/fields'
import type { Pole } from '../../../engine/model/kind'
import { newConductor, newDesign } from '../../../engine/model/newdesign'
import { initialRow, initialValues } from '../../../engine/model/values'
import { SIZES } from '../../../engine/tables/sizes'
import type { Random } from '../../reference/random'

/** How a random design is joined: anything to anything, or poles to poles as a person would. */
export type Manner = 'wild' | 'sensible'

/** A design of any parts with any values, some left empty, some of unknown kinds; the same for the same seed. */
export function randomDesign(random: Random, conductorCount: number, manner: Manner): Design {
  const parts = Array.from({ length: Math.max(2, Math.round(conductorCount / 2)) }, (_, i) =>
    randomPart(random, i),
  )
  const ends = parts.flatMap((part) => terminalsAt(part))
  const byPole = new Map<Pole, End[]>()
  for (const end of ends) byPole.set(end.pole, [...(byPole.get(end.pole) ?? []), end])
  const partners: Readonly<Record<Pole, readonly Pole[]>> = {
    positive: ['positive', 'any'],
    negative: ['negative', 'any'],
    any: ['positive', 'negative', 'any'],
    sense: ['sense', 'positive'],
    data: ['data'],
    mains: ['mains'],
  }
  const conductors = Array.from({ length: conductorCount }, (_, i): Conductor => {
    const from = random.pick(ends)
    const fitting =
      manner === 'wild' || random.unit() < 0.03
        ? ends
        : partners[from.pole].flatMap((p) => byPole.get(p) ?? [])
    const to = fitting.length > 0 ? random.pick(fitting) : from
    return {
      ...newConductor(`yy${i}`, `W${i}`, from.at, to.at),
      size: random.unit() < 0.1 ? null : random.pick(SIZES).key,
      lengthM: random.unit() < 0.1 ? null : Math.round(random.unit() * 800) / 100,
      insulationC: random.unit() < 0.2 ? random.pick([60, 70, 90, 105, 125]) : null,
      bunched: 1 + Math.floor(random.unit() * 5),
      engineSpace: random.unit() < 0.1,
      designCurrent: random.unit() < 0.03 ? { amps: 10 * random.unit(), reason: 'measured' } : null,
    }
  })
  return {
    ...newDesign('random', {
      name: 'Random',
      systemV: random.pick([12, 24, 48]),
      coldestC: random.pick([-50, -10, 0, 25]),
      ambientC: random.pick([20, 30, 40, 75]),
    }),
    parts,
    conductors,
  }
}

interface End {
  readonly at: TerminalRef
  readonly pole: Pole
}

function terminalsAt(part: Part): End[] {
  const kind = kindOf(part.kind)
  if (!kind)
    return ['a', 'b', 'c'].map((terminal) => ({ at: { part: part.id, terminal }, pole: 'any' as const }))
  return kind.terminals(part.values).map((t) => ({ at: { part: part.id, terminal: t.key }, pole: t.pole }))
}

function randomPart(random: Random, i: number): Part {
  const kind = random.unit() < 0.03 ? undefined : random.pick(KINDS)
  return {
    id: `zz${i}`,
    kind: kind?.key ?? 'from-tomorrow',
    designation: `${kind?.letter ?? 'U'}${i}`,
    name: random.unit() < 0.5 ? `Part ${i}` : '',
    location: '',
    x: (i % 12) * 60,
    y: Math.floor(i / 12) * 60,
    turn: 0,
    mirrored: false,
    values: kind ? randomValues(random, kind.fields) : {},
  }
}

function randomValues(random: Random, fields: Readonly<Record<string, Field>>): Values {
  const values: Record<string, Value> = { ...initialValues(fields) }
  for (const [key, field] of Object.entries(fields)) {
    if (field.role === 'result' || random.unit() < 0.2) continue
    values[key] =
      field.type === 'rows'
        ? Array.from({ length: 1 + Math.floor(random.unit() * 6) }, () => ({
            ...initialRow(field),
            ...Object.fromEntries(
              Object.entries(field.columns).map(([k, column]) => [k, randomCell(random, column)]),
            ),
          }))
        : randomCell(random, field)
  }
  return values
}

function randomCell(random: Random, field: CellField): Cell {
  switch (field.type) {
    case 'number': {
      if (random.unit() < 0.15 && !field.whole) return null
      const standard = field.standard
      if (standard && random.unit() < 0.8) return random.pick(standard)
      const low = field.min ?? 0
      const value = low + random.unit() * ((field.max ?? low + 50) - low)
      return field.whole ? Math.round(Math.min(value, low + 8)) : Math.round(value * 100) / 100
    }
    case 'choice':
      return random.pick(Object.keys(field.options))
    case 'flag':
      return random.unit() < 0.5
    case 'text':
      return random.unit() < 0.5 ? '' : 'words'
  }
}
