import type { Look } from './look'

/** A line painted in a look. */
export function LookLine({ look: { widthMm, dash, ink, coreMm }, d }: { look: Look; d: string }) {
  return (
    <>
      <path
        className={`line look ${ink}`}
        d={d}
        style={{
          strokeWidth: widthMm,
          ...(dash ? { strokeDasharray: dash.join(' '), strokeLinecap: 'butt' as const } : {}),
        }}
      />
      {coreMm > 0 && <path className="core" d={d} style={{ strokeWidth: coreMm }} />}
    </>
  )
}
