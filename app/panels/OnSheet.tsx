import type { Design } from '../../engine'
import { select, selectZone } from '../store/view'

/** Outlines and texts of the design, to be reached without the mouse. */
export function OnSheet({ design: { zones = [], texts = [] } }: { design: Design }) {
  if (zones.length + texts.length === 0) return null
  return (
    <section aria-label="Outlines and texts">
      <h3>Outlines and texts</h3>
      <p className="items">
        {zones.map((z) => (
          <button key={z.id} type="button" className="link" onClick={() => selectZone(z.id)}>
            {z.name}
          </button>
        ))}
        {texts.map((t) => (
          <button key={t.id} type="button" className="link" onClick={() => select([], [], [t.id])}>
            “{short(t.text)}”
          </button>
        ))}
      </p>
    </section>
  )
}

const short = (text: string): string => {
  const [line = ''] = text.split('\n')
  return line.length > 24 ? `${line.slice(0, 23)}…` : line
}
