import type { Conductor, Part } from '../model/design'
import type { Values } from '../model/fields'
import type { Kind, SymbolDrawing, Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import { complete } from '../model/values'
import type { Millimetres } from '../units'
import { kindOf } from './all'
import { placeholderKind } from './placeholder'
import { type Stance, turnMark, turnPoint, turnSide } from './transform'

/** A terminal where it stands on the sheet, turned and mirrored: x and y from the corner of the sheet, not of the part. */
export type PlacedTerminal = Terminal

export interface Box {
  readonly x: Millimetres
  readonly y: Millimetres
  readonly w: Millimetres
  readonly h: Millimetres
}

export interface PlacedSymbol {
  readonly w: Millimetres
  readonly h: Millimetres
  /** From the top left corner of the turned box. Text is upright, or reads upwards. */
  readonly marks: readonly Mark[]
}

interface Placed {
  readonly box: Box
  readonly terminals: readonly PlacedTerminal[]
  symbol: PlacedSymbol | null
  worked: PlacedSymbol | null
}

/**
 * Box, terminals and symbol of a part as it stands. Remembered for each part object: O(1) after the first call.
 * Of a part of unknown kind the terminals are those that the given conductors refer to.
 */
export const boxOf = (part: Part, conductors: readonly Conductor[] = []): Box => placed(part, conductors).box

export const terminalsOf = (part: Part, conductors: readonly Conductor[] = []): readonly PlacedTerminal[] =>
  placed(part, conductors).terminals

export function symbolOf(part: Part, conductors: readonly Conductor[] = []): PlacedSymbol {
  const known = placed(part, conductors)
  if (known.symbol) return known.symbol
  const drawing = drawingOf(kindIn(part, conductors), part.values).drawing
  const stance = stanceOf(part, drawing)
  const upright = part.turn === 0 && !part.mirrored
  const { w, h } = known.box
  known.symbol = { w, h, marks: upright ? drawing.marks : drawing.marks.map((m) => turnMark(m, stance)) }
  return known.symbol
}

/** The symbol with its contacts worked: closed, or thrown over. */
export function workedSymbolOf(part: Part, conductors: readonly Conductor[] = []): PlacedSymbol {
  const known = placed(part, conductors)
  const { w, h, marks } = symbolOf(part, conductors)
  known.worked ??= {
    w,
    h,
    marks: marks.map((m) => (m.is === 'line' && m.worked ? { ...m, points: m.worked } : m)),
  }
  return known.worked
}

const byPart = new WeakMap<Part, { readonly conductors: readonly Conductor[]; readonly placed: Placed }>()

function placed(part: Part, conductors: readonly Conductor[]): Placed {
  const known = byPart.get(part)
  if (known && (known.conductors === conductors || kindOf(part.kind))) return known.placed
  const fresh = place(part, conductors)
  byPart.set(part, { conductors, placed: fresh })
  return fresh
}

function place(part: Part, conductors: readonly Conductor[]): Placed {
  const { drawing, terminals } = drawingOf(kindIn(part, conductors), part.values)
  const stance = stanceOf(part, drawing)
  const onSide = part.turn === 90 || part.turn === 270
  const { w, h } = drawing
  return {
    box: { x: part.x, y: part.y, w: onSide ? h : w, h: onSide ? w : h },
    terminals: terminals.map((t) => {
      const [x, y] = turnPoint([t.x, t.y], stance)
      return { ...t, x: part.x + x, y: part.y + y, side: turnSide(t.side, stance) }
    }),
    symbol: null,
    worked: null,
  }
}

const stanceOf = ({ turn, mirrored }: Part, { w, h }: SymbolDrawing): Stance => ({ w, h, turn, mirrored })

function kindIn(part: Part, conductors: readonly Conductor[]): Kind {
  const kind = kindOf(part.kind)
  if (kind) return kind
  const seen = new Set<string>()
  for (const { from, to } of conductors)
    for (const end of [from, to]) if (end.part === part.id) seen.add(end.terminal)
  return placeholderKind(part.kind, [...seen].sort())
}

interface Drawn {
  readonly drawing: SymbolDrawing
  readonly terminals: readonly Terminal[]
}

/** Unturned drawings, by kind and values: moving or turning a part draws nothing anew. */
const byValues = new WeakMap<Kind, WeakMap<Values, Drawn>>()

function drawingOf(kind: Kind, values: Values): Drawn {
  let known = byValues.get(kind)
  if (!known) {
    known = new WeakMap()
    byValues.set(kind, known)
  }
  let drawn = known.get(values)
  if (!drawn) {
    const full = complete(kind.fields, values)
    drawn = { drawing: kind.symbol(full), terminals: kind.terminals(full) }
    known.set(values, drawn)
  }
  return drawn
}
