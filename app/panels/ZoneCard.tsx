import { Trash2, X } from 'lucide-react'
import { boxOf, partById, type Zone } from '../../engine'
import { useLatest } from '../store/latest'
import { removeZone, resizeZone } from '../store/onsheet'
import { doEdit, useOpen } from '../store/open'
import { select } from '../store/view'
import { NumberInput } from './NumberInput'
import { TextInput } from './TextInput'

/** The card of an outline: its name, its size, and the parts that it is drawn round. */
export function ZoneCard({ zone }: { zone: Zone }) {
  const design = useOpen((s) => s.design)
  const disabled = useOpen((s) => s.hold !== 'writing')
  const places = useLatest((s) => s.scene?.outlines.filter((o) => o.zone === zone.id).length ?? 1)
  const change = (what: string, next: Partial<Zone>) =>
    doEdit(`${what} outline ${zone.name}`, { do: 'zone', zone: { ...zone, ...next } })
  const own = new Set(zone.parts)
  const strangers = design.parts.filter((p) => {
    const { x, y, w, h } = boxOf(p, design.conductors)
    const inside = x >= zone.x && y >= zone.y && x + w <= zone.x + zone.w && y + h <= zone.y + zone.h
    return inside && !own.has(p.id)
  })
  const size = (label: string, value: number, set: (mm: number) => void) => (
    <div className="field">
      <span className="label">{label}</span>
      <NumberInput
        label={label}
        unit="mm"
        value={value}
        min={2.5}
        max={20000}
        disabled={disabled}
        onChange={(mm) => mm !== null && set(mm)}
      />
    </div>
  )
  return (
    <>
      <header>
        <h2>
          {zone.name} <span className="kind">outline</span>
        </h2>
      </header>
      <div className="fields">
        <label className="field" htmlFor="zone-name">
          <span className="label">Name</span>
          <TextInput
            id="zone-name"
            value={zone.name}
            disabled={disabled}
            onChange={(name) => change('Rename', { name })}
          />
        </label>
        {size('Width', zone.w, (w) => resizeZone(zone, zone.x, zone.y, w, zone.h))}
        {size('Height', zone.h, (h) => resizeZone(zone, zone.x, zone.y, zone.w, h))}
      </div>
      <h3>Drawn round</h3>
      {zone.parts.length === 0 && <p className="quiet">No parts: it stays where it was put.</p>}
      <ul className="members">
        {zone.parts.map((id) => {
          const part = partById(design, id)
          return (
            part && (
              <li key={id}>
                <button type="button" className="link" onClick={() => select([id])}>
                  {part.designation} {part.name}
                </button>
                <button
                  type="button"
                  className="icon"
                  aria-label={`Leave ${part.designation} out`}
                  disabled={disabled}
                  onClick={() => change('Change', { parts: zone.parts.filter((p) => p !== id) })}
                >
                  <X size={14} aria-hidden />
                </button>
              </li>
            )
          )
        })}
      </ul>
      {strangers.length > 0 && (
        <button
          type="button"
          className="plain"
          disabled={disabled}
          onClick={() => change('Change', { parts: [...zone.parts, ...strangers.map((p) => p.id)] })}
        >
          Take in {strangers.map((p) => p.designation).join(', ')}
        </button>
      )}
      {places > 1 && (
        <p className="quiet">
          Drawn in {places} places, each with the name: other parts stand between those it is drawn round.
        </p>
      )}
      <p className="quiet">It follows its parts wherever they are moved or arranged.</p>
      <button type="button" className="plain" disabled={disabled} onClick={() => removeZone(zone.id)}>
        <Trash2 size={14} aria-hidden /> Delete the outline
      </button>
    </>
  )
}
