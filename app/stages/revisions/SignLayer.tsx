import type { CSSProperties } from 'react'
import { CHANGE_MARKS, type XY } from '../../../engine'
import { linePath } from '../../symbols/shape'
import type { Sign } from './signs'

const GAP = 1.5
const BADGE = 4.4

interface Props {
  readonly signs: readonly Sign[]
  readonly picked: string | null
  /** How much larger than drawn: from afar marks stay as large as they must be to be seen. */
  readonly scale: number
  readonly onPick: (row: string) => void
}

/** Marks over a drawing: each kind of change has a line of its own, a sign and a colour. */
export function SignLayer({ signs, picked, scale, onPick }: Props) {
  return signs.map((sign) => (
    // biome-ignore lint/a11y/noStaticElementInteractions lint/a11y/useKeyWithClickEvents: the list holds the same as buttons
    <g
      key={sign.row}
      className={`sign ${sign.what}${picked === sign.row ? ' picked' : ''}`}
      data-row={sign.row}
      style={{ '--larger': scale } as CSSProperties}
      onClick={() => onPick(sign.row)}
    >
      {sign.ways.map((way, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: ways have no identity of their own
        <path key={i} className="way" d={linePath(way)} />
      ))}
      {sign.boxes.map(({ x, y, w, h }) => (
        <rect
          key={`${x} ${y}`}
          className="round"
          x={x - GAP}
          y={y - GAP}
          width={w + 2 * GAP}
          height={h + 2 * GAP}
          rx={1}
        />
      ))}
      {badgesOf(sign).map(([x, y]) => (
        <g key={`${x} ${y}`} className="badge" transform={`translate(${x} ${y}) scale(${scale})`}>
          <rect x={-BADGE / 2} y={-BADGE / 2} width={BADGE} height={BADGE} rx={0.8} />
          <text y={1.3}>{CHANGE_MARKS[sign.what]}</text>
        </g>
      ))}
    </g>
  ))
}

/** At the corner of a box, in the middle of a way. */
function badgesOf({ boxes, ways }: Sign): readonly XY[] {
  return [
    ...boxes.map(({ x, y }): XY => [x - GAP, y - GAP]),
    ...ways.filter((way) => way.length > 1).map(halfWay),
  ]
}

function halfWay(way: readonly XY[]): XY {
  const lengths = way.slice(1).map(([x, y], i) => Math.hypot(x - way[i]![0], y - way[i]![1]))
  let left = lengths.reduce((sum, l) => sum + l, 0) / 2
  for (const [i, length] of lengths.entries()) {
    if (left <= length && length > 0) {
      const [[ax, ay], [bx, by]] = [way[i]!, way[i + 1]!]
      return [ax + ((bx - ax) * left) / length, ay + ((by - ay) * left) / length]
    }
    left -= length
  }
  return way[0]!
}
