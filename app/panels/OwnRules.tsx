import { type NumberField, OWN_BOUNDS, type OwnRules as Own, RULE_SETS } from '../../engine'
import { doEdit } from '../store/open'
import { FieldRow } from './FieldRow'

const FIGURES: Readonly<
  Record<keyof typeof OWN_BOUNDS, readonly [label: string, unit: NumberField['unit']]>
> = {
  insulationC: ['Insulation, usual', '°C'],
  devicePercent: ['Device, of ampacity', '%'],
  nearSourceM: ['Ahead of first device', 'm'],
  nearSourceSheathedM: ['The same, sheathed', 'm'],
  dropCriticalPercent: ['Drop, critical', '%'],
  dropGeneralPercent: ['Drop, general', '%'],
  conduitPercent: ['Current in a conduit', '%'],
  thermalPercent: ['In thermal insulation', '%'],
}

/** The designer's own figures; what is left empty stays as in the rule set that they are based on. */
export function OwnRules({ own, disabled }: { own: Own; disabled: boolean }) {
  const set = (change: Partial<Own>) =>
    doEdit('Change own rules', { do: 'rules', own: { ...own, ...change } })
  return (
    <div className="fields">
      <h3>Own rules</h3>
      <FieldRow
        field={{
          type: 'text',
          label: 'Called',
          about: 'Printed wherever results name their rule set.',
          initial: '',
        }}
        value={own.title}
        disabled={disabled}
        onChange={(title) => set({ title: String(title) })}
      />
      <FieldRow
        field={{
          type: 'choice',
          label: 'Based on',
          about: 'Everything that is not stated here comes from this rule set.',
          options: Object.fromEntries(RULE_SETS.map((r) => [r.key, r.title])),
          initial: '',
        }}
        value={own.basedOn}
        disabled={disabled}
        onChange={(basedOn) => set({ basedOn: String(basedOn) })}
      />
      {(Object.keys(FIGURES) as (keyof typeof FIGURES)[]).map((key) => {
        const [label, unit] = FIGURES[key]
        const [min, max] = OWN_BOUNDS[key]
        return (
          <FieldRow
            key={key}
            field={{
              type: 'number',
              label,
              about: 'Empty: as in the rule set it is based on.',
              unit,
              initial: null,
              min,
              max,
            }}
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
        )
      })}
    </div>
  )
}
