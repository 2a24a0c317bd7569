import { useEffect, useState } from 'react'
import { ruleSetOf, type Selection } from '../../engine'
import { useOpen } from '../store/open'
import { chooseSizes } from '../worker/sizing'
import type { SizingOutcome } from '../worker/sizing.worker'
import { NoSizes } from './NoSizes'
import { Sheet } from './Sheet'
import { SizesFound } from './SizesFound'

interface Props {
  /** What was selected when it was asked for; null: nothing. */
  readonly selection: Selection | null
  readonly onClose: () => void
}

type State = 'choosing' | { readonly failed: string } | SizingOutcome

/** Chooses sizes and ratings for the design or the selection, and shows what would change before it is done. */
export function SizeIt({ selection, onClose }: Props) {
  const design = useOpen((s) => s.design)
  const [whole, setWhole] = useState(selection === null)
  const [state, setState] = useState<State>('choosing')
  const ruleSet = ruleSetOf(design)
  const known = ruleSet !== undefined
  useEffect(() => {
    if (!known) return
    let wanted = true
    setState('choosing')
    chooseSizes({ design, scope: whole || !selection ? 'all' : selection }).then(
      (outcome) => wanted && setState(outcome),
      (e: unknown) => wanted && setState({ failed: e instanceof Error ? e.message : String(e) }),
    )
    return () => {
      wanted = false
    }
  }, [design, selection, whole, known])

  return (
    <Sheet
      title="Size it"
      about="Standard sizes and ratings with the least copper that carries every current, is protected, and keeps every drop within its limit. Locked sizes stay."
      onClose={onClose}
    >
      {selection && (
        <fieldset className="scope" aria-label="What is sized">
          {(
            [
              [false, `What is selected (${counted(selection)})`],
              [true, 'The whole design'],
            ] as const
          ).map(([value, text]) => (
            <label key={text}>
              <input type="radio" name="scope" checked={whole === value} onChange={() => setWhole(value)} />
              {text}
            </label>
          ))}
        </fieldset>
      )}
      {!known ? (
        <p className="failure" role="alert">
          Not made, because this version does not know the rule set "{design.settings.ruleSet}". Choose
          another one on the card of the design.
        </p>
      ) : state === 'choosing' ? (
        <p className="quiet" role="status">
          Choosing…
        </p>
      ) : 'failed' in state ? (
        <p className="failure" role="alert">
          Sizing broke off: {state.failed}. Nothing has changed.
        </p>
      ) : (
        <>
          {state.sizing.none.length > 0 && (
            <NoSizes reasons={state.sizing.none} all={state.sizing.sized === null} onClose={onClose} />
          )}
          {state.sizing.sized && (
            <SizesFound
              sized={state.sizing.sized}
              inPart={state.sizing.none.length > 0}
              findings={state.findings ?? []}
              onClose={onClose}
            />
          )}
        </>
      )}
      {ruleSet && (
        <p className="quiet">
          By {ruleSet.title}, {ruleSet.edition}. Local codes and a licensed person have the last word.
        </p>
      )}
    </Sheet>
  )
}

const counted = ({ parts, conductors }: Selection): string =>
  [
    conductors.length && `${conductors.length} conductor${conductors.length === 1 ? '' : 's'}`,
    parts.length && `fuses of ${parts.length} part${parts.length === 1 ? '' : 's'}`,
  ]
    .filter(Boolean)
    .join(', ')
