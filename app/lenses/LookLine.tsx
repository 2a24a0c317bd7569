import type { Look } from './look'

/** Far out a pattern is drawn coarser, so that it can still be told; the sheet says how much. */
const coarse = (mm: number): string => `calc(${mm}px * var(--coarse, 1))`

/** A line painted in a look. */
export function LookLine({ look: { widthMm, dash, ink, coreMm }, d }: { look: Look; d: string }) {
  return (
    <>
      <path
        className={`line look ${ink}`}
        d={d}
        style={{
          strokeWidth: widthMm,
          ...(dash ? { strokeDasharray: dash.map(coarse).join(' '), strokeLinecap: 'butt' as const } : {}),
        }}
      />
      {coreMm > 0 && <path className="core" d={d} style={{ strokeWidth: coreMm }} />}
    </>
  )
}
