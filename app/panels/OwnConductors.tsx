import {
  type Design,
  newOwnConductor,
  OWN_CONDUCTOR_BOUNDS,
  type OwnConductor,
  type RowsField,
} from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { RowsInput } from './RowsInput'

const figure = (
  key: keyof typeof OWN_CONDUCTOR_BOUNDS,
  label: string,
  about: string,
  unit: 'mm²' | 'Ω/km' | 'A' | '°C',
) => {
  const [min, max] = OWN_CONDUCTOR_BOUNDS[key]
  return { type: 'number', label: `${label}, ${unit}`, about, unit: '', initial: null, min, max } as const
}

const TABLE: RowsField = {
  type: 'rows',
  label: 'Own conductors',
  about:
    "Cable at hand that the built-in sizes lack. Marked as the designer's own figure wherever it is printed.",
  each: 'row',
  min: 0,
  max: 99,
  initial: 0,
  columns: {
    name: { type: 'text', label: 'Name', about: 'As it is sold or marked.', initial: '' },
    sectionMm2: figure('sectionMm2', 'Copper', 'True cross-section.', 'mm²'),
    ohmsPerKm: figure('ohmsPerKm', 'At 20 °C', 'Empty: worked out from the section.', 'Ω/km'),
    amps: figure(
      'amps',
      'Bears',
      'Alone in free air, at the reference of the rule set. Empty: by section.',
      'A',
    ),
    insulationC: figure('insulationC', 'Insulation', 'Empty: the usual one of the rule set.', '°C'),
    offered: { type: 'flag', label: 'Offer when sizing', about: 'Sizing may choose it.', initial: false },
  },
}

/** The table of the designer's own conductors. */
export function OwnConductors({ design }: { design: Design }) {
  const disabled = useOpen((s) => s.hold !== 'writing')
  const own = design.ownConductors ?? []
  return (
    <section className="fields" aria-label="Own conductors">
      <h3>Own conductors</h3>
      <RowsInput
        field={TABLE}
        rows={own.map(({ key: _, ...row }) => ({ ...row }))}
        disabled={disabled}
        onChange={(rows) =>
          doEdit('Change own conductors', {
            do: 'own conductors',
            own:
              rows.length > own.length
                ? [...own, newOwnConductor(design)]
                : rows.map((row, i) => ({ ...own[i]!, ...(row as Partial<OwnConductor>) })),
          })
        }
      />
    </section>
  )
}
