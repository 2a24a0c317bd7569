import { turnLens, useView } from '../store/view'
import { LENS_KEYS, LENSES, type Lens } from './lens'

/** Small pictures, 16 × 16: what each lens does to a line. */
const PICTURES: Readonly<Record<Lens, readonly (readonly [string, number])[]>> = {
  current: [
    ['M1 3.5H15', 1],
    ['M1 7.5H15', 2],
    ['M1 12.5H15', 3.5],
  ],
  protection: [
    ['M1 5H4M12 5H15M4 2.5H12V7.5H4Z', 1.4],
    ['M1 12.5H3M5 12.5H7M9 12.5H11M13 12.5H15', 3.5],
  ],
  meter: [
    ['M1 12.5H15', 1.4],
    ['M3 9.5A5 5 0 0 1 13 9.5', 1.4],
    ['M8 9.5L11 4.5', 1.4],
  ],
  drop: [['M1 3H5V6.5H9V10H13V13.5H15', 1.6]],
}

/** Which lens lies over the drawing: one of four, or none. */
export function LensSwitch() {
  const on = useView((s) => s.lens)
  const trying = useView((s) => s.trying)
  return (
    <fieldset className="cell lenses" aria-label="Lenses">
      {LENS_KEYS.map((lens) => {
        const { title, key } = LENSES[lens]
        return (
          <button
            key={lens}
            type="button"
            className="icon"
            disabled={trying}
            aria-pressed={on === lens}
            aria-label={`Lens: ${title}`}
            title={`Lens: ${title} (${key})`}
            onClick={() => turnLens(lens)}
          >
            <svg viewBox="0 0 16 16" width="18" height="18" aria-hidden>
              {PICTURES[lens].map(([d, width]) => (
                <path key={d} d={d} strokeWidth={width} />
              ))}
            </svg>
          </button>
        )
      })}
    </fieldset>
  )
}
