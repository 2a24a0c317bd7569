import { useMemo } from 'react'
import { lostSigns } from '../../../engine'
import { useOpen } from '../../store/open'

/** Before anything is printed: which texts the typeface cannot set whole. */
export function LostSigns() {
  const design = useOpen((s) => s.design)
  const lost = useMemo(() => lostSigns(design), [design])
  if (lost.length === 0) return null
  return (
    <details className="lost-signs">
      <summary>
        {lost.length === 1 ? '1 text holds' : `${lost.length} texts hold`} signs that print as “?”
      </summary>
      <p>The typeface of the sheets does not have them. Write these in Latin letters:</p>
      <ul>
        {lost.map(({ text, signs }) => (
          <li key={text}>
            <bdi>{text}</bdi> <small>({signs})</small>
          </li>
        ))}
      </ul>
    </details>
  )
}
