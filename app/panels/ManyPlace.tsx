import { type PartId, partById } from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { TextInput } from './TextInput'

/** The location of several parts, set on all of them in one step. */
export function ManyPlace({ parts }: { parts: readonly PartId[] }) {
  const design = useOpen((s) => s.design)
  const disabled = useOpen((s) => s.hold !== 'writing')
  const places = new Set(parts.map((id) => partById(design, id)?.location ?? ''))
  const [first = ''] = places
  return (
    <div className="fields">
      <label className="field" htmlFor="parts-location">
        <span className="label">Location</span>
        <TextInput
          id="parts-location"
          value={places.size === 1 ? first : ''}
          placeholder={places.size === 1 ? '' : `${places.size} different ones`}
          disabled={disabled}
          onChange={(location) =>
            doEdit(`Change location of ${parts.length} parts`, {
              do: 'all',
              edits: parts.map((part) => ({ do: 'part', part, set: { location } })),
            })
          }
        />
      </label>
    </div>
  )
}
