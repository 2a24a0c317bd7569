import { type Design, HANDOVER_LANGUAGES, type Settings } from '../../../engine'
import { TextInput } from '../../panels/TextInput'
import { doEdit, useOpen } from '../../store/open'
import { ChapterList } from './ChapterList'

const FIELDS = [
  { key: 'customer', label: 'Customer', lines: 1 },
  { key: 'vehicle', label: 'Vehicle', lines: 1 },
  { key: 'installer', label: 'Installer', lines: 1 },
  { key: 'contact', label: 'How to reach the installer', lines: 3 },
] as const satisfies readonly { key: keyof Settings; label: string; lines: number }[]

/** What the installer adds: names, language, own paragraphs, and which chapters there are. */
export function EditSide({ design }: { design: Design }) {
  const disabled = useOpen((s) => s.hold !== 'writing')
  const { settings, handover } = design
  return (
    <aside aria-label="Your words">
      <h2>Handover pack</h2>
      <p className="quiet">
        The chapters are made from the drawing and follow it. Add who built it, and paragraphs of your own.
      </p>
      <div className="words">
        {FIELDS.map(({ key, label, lines }) => (
          <label key={key} htmlFor={`handover-${key}`}>
            <span>{label}</span>
            <TextInput
              id={`handover-${key}`}
              lines={lines}
              value={settings[key] ?? ''}
              disabled={disabled}
              onChange={(text) =>
                doEdit(`Change ${label.toLowerCase()}`, { do: 'settings', set: { [key]: text } })
              }
            />
          </label>
        ))}
        <label htmlFor="handover-language">
          <span>Language of the pack</span>
          <select
            id="handover-language"
            value={handover?.language ?? 'en'}
            disabled={disabled}
            onChange={(e) =>
              doEdit('Change the language of the handover pack', {
                do: 'handover',
                set: { language: e.target.value },
              })
            }
          >
            {Object.entries(HANDOVER_LANGUAGES).map(([key, { name }]) => (
              <option key={key} value={key}>
                {name}
              </option>
            ))}
          </select>
        </label>
      </div>
      <ChapterList design={design} disabled={disabled} />
    </aside>
  )
}
