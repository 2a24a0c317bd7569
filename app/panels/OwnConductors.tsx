import { type Design, newOwnConductor, OWN_CONDUCTOR_TABLE, type OwnConductor } from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { RowsInput } from './RowsInput'

/** The table of the designer's own conductors. */
export function OwnConductors({ design }: { design: Design }) {
  const disabled = useOpen((s) => s.hold !== 'writing')
  const own = design.ownConductors ?? []
  return (
    <section className="fields" aria-label="Own conductors">
      <h3>Own conductors</h3>
      <RowsInput
        field={OWN_CONDUCTOR_TABLE}
        rows={own.map(({ key: _, ...row }) => ({ ...row }))}
        disabled={disabled}
        onRemove={(i) =>
          doEdit(`Remove ${own[i]!.name}`, { do: 'own conductors', own: own.filter((_, k) => k !== i) })
        }
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
