import { memo, useMemo } from 'react'
import { typeSize } from '../../engine'
import { type Box, placeTags, type Wanted } from '../lenses/tags'
import { useHand } from '../store/hand'
import { measureAt, tagHeight } from './tagging'

interface TagLayerProps {
  readonly wanted: readonly Wanted[]
  readonly taken: readonly Box[]
  readonly zoom: number
}

/** Words put where there is room; they stand aside while parts are under the hand. */
export const TagLayer = memo(function TagLayer({ wanted, taken, zoom }: TagLayerProps) {
  const still = useHand((s) => s.parts.size === 0)
  const measure = useMemo(() => measureAt(zoom), [zoom])
  const tags = useMemo(() => placeTags(wanted, taken, measure), [wanted, taken, measure])
  const height = tagHeight(zoom)
  if (!still) return null
  return tags.map(({ key, text, at, turn, boxed }) => {
    const [w, h] = measure(text)
    return (
      <g
        key={key}
        className={`tag ${boxed ?? 'bare'}`}
        data-of={key}
        transform={`translate(${at[0]} ${at[1]})${turn ? ' rotate(-90)' : ''}`}
      >
        <rect x={-w / 2} y={-h / 2} width={w} height={h} rx={h / 5} strokeWidth={height / 10} />
        <text y={height / 2} fontSize={typeSize(height)} textAnchor="middle">
          {text}
        </text>
      </g>
    )
  })
})
