import type { CSSProperties } from 'react'
import type { terminalsOf } from '../../engine'
import { PX } from './scale'

/** Fingers instead of a mouse. */
export const COARSE = window.matchMedia('(pointer: coarse)').matches

/** What a finger can hit, CSS px on the page: WCAG 2.2, 2.5.5. */
const FINGER_PX = 44
/** How much of it lies inside the symbol, so that the part itself can still be taken hold of. */
const INSIDE = 0.2

type PlacedTerminal = ReturnType<typeof terminalsOf>[number]

interface Reach {
  /** Along the side that the terminal stands on, and across it; px of the sheet. */
  readonly along: number
  readonly across: number
}

/** How far a terminal reaches at a zoom: a finger's width, but never beyond half way to its neighbours on that side. */
export function reachOf(terminal: PlacedTerminal, all: readonly PlacedTerminal[], zoom: number): Reach {
  const finger = FINGER_PX / zoom
  const apart = all
    .filter((t) => t !== terminal && t.side === terminal.side)
    .map((t) => Math.hypot(t.x - terminal.x, t.y - terminal.y) * PX)
    .filter((d) => d > 0)
  return { along: Math.min(finger, ...apart), across: finger }
}

/** The place of that area about the middle of the terminal. */
export function reachStyle({ side }: PlacedTerminal, { along, across }: Reach): CSSProperties {
  const upright = side === 'left' || side === 'right'
  const [w, h] = upright ? [across, along] : [along, across]
  const out = across * (0.5 - INSIDE)
  const [dx, dy] = { left: [-out, 0], right: [out, 0], up: [0, -out], down: [0, out] }[side] as [
    number,
    number,
  ]
  return {
    '--reach-w': `${w}px`,
    '--reach-h': `${h}px`,
    '--reach-x': `${dx}px`,
    '--reach-y': `${dy}px`,
  } as CSSProperties
}
