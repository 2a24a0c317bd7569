import { Trash2 } from 'lucide-react'
import type { SheetText } from '../../engine'
import { removeTexts } from '../store/onsheet'
import { doEdit, useOpen } from '../store/open'
import { TextInput } from './TextInput'

const VIEWS: Readonly<Record<SheetText['view'], string>> = {
  all: 'Every view',
  'single-line': 'Single-line view',
  'both-poles': 'Both poles',
  data: 'Data links',
}

/** The card of a text on the sheet. */
export function TextCard({ text }: { text: SheetText }) {
  const disabled = useOpen((s) => s.hold !== 'writing')
  const change = (what: string, next: Partial<SheetText>) =>
    doEdit(what, { do: 'text', text: { ...text, ...next } })
  return (
    <>
      <header>
        <h2>
          Text <span className="kind">on the sheet</span>
        </h2>
      </header>
      <div className="fields">
        <label className="field wide" htmlFor="sheet-text">
          <span className="label">Words</span>
          <TextInput
            id="sheet-text"
            lines={4}
            value={text.text}
            disabled={disabled}
            onChange={(words) => change('Rewrite text', { text: words })}
          />
        </label>
        <label className="field" htmlFor="text-view">
          <span className="label">Stands in</span>
          <select
            id="text-view"
            value={text.view}
            disabled={disabled}
            onChange={(e) => change('Show text elsewhere', { view: e.target.value as SheetText['view'] })}
          >
            {Object.entries(VIEWS).map(([key, title]) => (
              <option key={key} value={key}>
                {title}
              </option>
            ))}
          </select>
        </label>
      </div>
      <p className="quiet">Conductors and their words keep clear of it.</p>
      <button type="button" className="plain" disabled={disabled} onClick={() => removeTexts([text.id])}>
        <Trash2 size={14} aria-hidden /> Delete the text
      </button>
    </>
  )
}
