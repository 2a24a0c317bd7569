import { memo } from 'react'
import { initialValues, type Kind } from '../../engine'
import { Marks } from './Marks'

/** CSS px per mm at most: small symbols stay small. */
const LARGEST = 2

/** The symbol of a kind as it leaves the shelf, fitted into a box, or at a given scale in px per mm. */
export const KindPicture = memo(function KindPicture({ kind, scale }: { kind: Kind; scale?: number }) {
  const { w, h, marks } = kind.symbol(initialValues(kind.fields))
  const px = scale ?? Math.min(40 / w, 26 / h, LARGEST)
  return (
    <svg viewBox={`-0.5 -0.5 ${w + 1} ${h + 1}`} width={(w + 1) * px} height={(h + 1) * px} aria-hidden>
      <Marks marks={marks} />
    </svg>
  )
})
