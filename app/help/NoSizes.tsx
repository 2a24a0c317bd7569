import { conductorById, type NoSize, noSizeWords, partById } from '../../engine'
import { useOpen } from '../store/open'
import { lookAt, select } from '../store/view'

interface Props {
  readonly reasons: readonly NoSize[]
  /** Nothing at all can be chosen. */
  readonly all: boolean
  readonly onClose: () => void
}

/** Why standard sizes do not hold everything together, each reason with the way to its place. */
export function NoSizes({ reasons, all, onClose }: Props) {
  const design = useOpen((s) => s.design)
  const show = (parts: readonly string[], conductors: readonly string[]) => {
    onClose()
    select(parts, conductors)
    lookAt(parts, conductors)
  }
  return (
    <>
      <h3>What cannot be chosen, and why</h3>
      <p className="failure" role="alert">
        {all
          ? 'There is no choice that holds everything. Nothing has changed.'
          : 'No standard size or rating holds everything. What can be chosen without it follows below; what is listed here stays open.'}
      </p>
      <ol className="problems">
        {reasons.map((reason) => {
          const parts = 'part' in reason ? [reason.part] : []
          const conductors =
            'conductor' in reason ? [reason.conductor] : 'conductors' in reason ? reason.conductors : []
          const names = [
            ...parts.map((id) => partById(design, id)?.designation),
            ...conductors.slice(0, 3).map((id) => conductorById(design, id)?.number),
          ]
          const words = noSizeWords(reason, design)
          return (
            <li key={words}>
              {words}{' '}
              <button type="button" className="link" onClick={() => show(parts, conductors)}>
                Show {names.join(', ')}
              </button>
            </li>
          )
        })}
      </ol>
    </>
  )
}
