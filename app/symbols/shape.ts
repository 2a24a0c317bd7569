import type { Ink, Mark, Pen, TextMark, XY } from '../../engine'

/** One mark as an SVG element. Attributes are named as React names them; the string painter spells them out. */
export interface Shape {
  readonly tag: 'path' | 'circle' | 'text'
  readonly attrs: Readonly<Record<string, string | number>>
  readonly text?: string
}

/** Line widths of the ISO 128 series, mm. */
export const PEN_MM: Readonly<Record<Pen, number>> = { thin: 0.18, line: 0.25, strong: 0.5, bar: 1 }

/** Dashes and gaps, mm. */
export const DASHES = { dash: [1.5, 1.2], 'dash-dot': [4, 1.2, 0.1, 1.2] } as const

/** Height of a capital letter as a part of the type size, for the product's typeface. */
const CAPITAL = 0.698

export const inkVar = (ink: Ink): string => `var(--${ink === 'paper' ? 'sheet' : ink})`

/** Turns a mark into its shape. Colours come from `colour`, so that a picture can carry fixed ones. */
export function shapeOf(mark: Mark, colour: (ink: Ink) => string = inkVar): Shape {
  if (mark.is === 'text') return textShape(mark, colour)
  const stroke = {
    stroke: colour(mark.ink ?? 'ink'),
    strokeWidth: PEN_MM[mark.pen],
    strokeLinecap: 'round',
    strokeLinejoin: 'round',
  }
  switch (mark.is) {
    case 'line':
      return {
        tag: 'path',
        attrs: {
          d: linePath(mark.points, mark.closed ?? false),
          fill: mark.fill ? colour(mark.fill) : 'none',
          ...(mark.dash
            ? { strokeDasharray: DASHES[mark.dash === true ? 'dash' : mark.dash].join(' ') }
            : {}),
          ...stroke,
        },
      }
    case 'circle':
      return {
        tag: 'circle',
        attrs: {
          cx: mark.at[0],
          cy: mark.at[1],
          r: mark.r,
          fill: mark.fill ? colour(mark.fill) : 'none',
          ...stroke,
        },
      }
    case 'arc':
      return {
        tag: 'path',
        attrs: { d: arcPath(mark.at, mark.r, mark.from, mark.to), fill: 'none', ...stroke },
      }
  }
}

export function linePath(points: readonly XY[], closed = false): string {
  return `M${points.map(([x, y]) => `${round(x)} ${round(y)}`).join('L')}${closed ? 'Z' : ''}`
}

function arcPath([cx, cy]: XY, r: number, from: number, to: number): string {
  const at = (degrees: number) => {
    const a = (degrees * Math.PI) / 180
    return `${round(cx + r * Math.cos(a))} ${round(cy + r * Math.sin(a))}`
  }
  const large = Math.abs(to - from) > 180 ? 1 : 0
  return `M${at(from)}A${r} ${r} 0 ${large} ${to > from ? 1 : 0} ${at(to)}`
}

function textShape(mark: TextMark, colour: (ink: Ink) => string): Shape {
  const [x, y] = mark.at
  return {
    tag: 'text',
    attrs: {
      x,
      y,
      fill: colour(mark.ink ?? 'ink'),
      fontSize: round(mark.height / CAPITAL),
      fontWeight: mark.weight === 'bold' ? 600 : 400,
      textAnchor: mark.anchor ?? 'start',
      // Words are measured with their spaces; a space at the beginning must not fall away.
      xmlSpace: 'preserve',
      ...(mark.turn === 90 ? { transform: `rotate(-90 ${x} ${y})` } : {}),
    },
    text: mark.text,
  }
}

const round = (n: number): number => Math.round(n * 1000) / 1000
