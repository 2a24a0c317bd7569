import { OWN_BOUNDS, OWN_RULE_FIELDS, type OwnRules as Own } from '../../engine'
import { doEdit } from '../store/open'
import { FieldRow } from './FieldRow'

/** The designer's own figures; what is left empty stays as in the rule set that they are based on. */
export function OwnRules({ own, disabled }: { own: Own; disabled: boolean }) {
  const set = (change: Partial<Own>) =>
    doEdit('Change own rules', { do: 'rules', own: { ...own, ...change } })
  return (
    <div className="fields">
      <h3>Own rules</h3>
      {(['title', 'basedOn'] as const).map((key) => (
        <FieldRow
          key={key}
          field={OWN_RULE_FIELDS[key]}
          value={own[key]}
          disabled={disabled}
          onChange={(value) => set({ [key]: String(value) })}
        />
      ))}
      {(Object.keys(OWN_BOUNDS) as (keyof typeof OWN_BOUNDS)[]).map((key) => (
        <FieldRow
          key={key}
          field={OWN_RULE_FIELDS[key]}
          value={own[key] ?? null}
          disabled={disabled}
          onChange={(value) => {
            const { [key]: _, ...rest } = own
            doEdit('Change own rules', {
              do: 'rules',
              own: typeof value === 'number' ? { ...rest, [key]: value } : rest,
            })
          }}
        />
      ))}
    </div>
  )
}
