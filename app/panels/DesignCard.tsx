import {
  type CellField,
  DESIGN_FIELDS,
  type Design,
  type Edit,
  OWN_RULES,
  type Settings,
  type Value,
} from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { DrawingNotes } from './DrawingNotes'
import { FieldRow } from './FieldRow'
import { Legend } from './Legend'
import { OnSheet } from './OnSheet'
import { OwnConductors } from './OwnConductors'
import { OwnRules } from './OwnRules'

/** Once there are revisions, these come from issuing alone. */
const BY_ISSUING = ['revision', 'date']

/** Nothing is selected: the design itself, and what the lines and marks mean. */
export function DesignCard() {
  const design = useOpen((s) => s.design)
  const { settings, ownRules } = design
  const disabled = useOpen((s) => s.hold !== 'writing')
  const issued = (design.revisions?.length ?? 0) > 0
  return (
    <>
      <header>
        <h2>
          This design <span className="kind">nothing selected</span>
        </h2>
      </header>
      <div className="fields">
        {Object.entries(DESIGN_FIELDS).map(([key, field]) => (
          <FieldRow
            key={key}
            field={key === 'ruleSet' ? withUnknown(field, settings.ruleSet) : field}
            value={key === 'systemV' ? String(settings.systemV) : (settings[key as keyof Settings] ?? '')}
            disabled={disabled || (issued && BY_ISSUING.includes(key))}
            onChange={(value) => doEdit(`Change ${field.label.toLowerCase()}`, editOf(design, key, value))}
          />
        ))}
      </div>
      {settings.ruleSet === OWN_RULES && ownRules && <OwnRules own={ownRules} disabled={disabled} />}
      <OwnConductors design={design} />
      <DrawingNotes design={design} />
      <OnSheet design={design} />
      <Legend />
    </>
  )
}

/** A rule set that this version does not know stays chosen, and says so. */
function withUnknown(field: CellField, key: string): CellField {
  if (field.type !== 'choice' || key in field.options) return field
  return { ...field, options: { ...field.options, [key]: `${key} (not known to this version)` } }
}

/** Choosing own figures for the first time begins with those of the rule set that was chosen before. */
function editOf({ settings, ownRules }: Design, key: string, value: Value): Edit {
  const set: Edit = { do: 'settings', set: { [key]: key === 'systemV' ? Number(value) : value } }
  if (key !== 'ruleSet' || value !== OWN_RULES || ownRules) return set
  const own = { basedOn: settings.ruleSet, title: 'Own figures' }
  return { do: 'all', edits: [{ do: 'rules', own }, set] }
}
