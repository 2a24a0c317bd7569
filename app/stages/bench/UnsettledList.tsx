import {
  BUILT_WORDS,
  type BuiltFact,
  builtWords,
  conductorById,
  deviceName,
  type Unsettled,
  unsettledOf,
} from '../../../engine'
import { useOpen } from '../../store/open'
import { takeUp } from './looking'
import { recordBuilt } from './record'

/** Facts that two devices have recorded differently: both are shown, and somebody who has looked says which is right. */
export function UnsettledList() {
  const design = useOpen((s) => s.design)
  const unsettled = unsettledOf(design)
  if (unsettled.length === 0) return null
  return (
    <>
      <h2>Recorded differently on two devices</h2>
      <p>The latest counts until somebody has looked.</p>
      <ul className="differences" aria-label="Recorded differently">
        {unsettled.map((u) => (
          <Row key={`${u.conductor} ${u.fact.what}`} unsettled={u} />
        ))}
      </ul>
    </>
  )
}

function Row({ unsettled: { conductor: id, fact, others } }: { unsettled: Unsettled }) {
  const design = useOpen((s) => s.design)
  const disabled = useOpen((s) => s.hold !== 'writing')
  const conductor = conductorById(design, id)!
  return (
    <li>
      <button type="button" className="number" onClick={() => takeUp(id)}>
        {conductor.number}
      </button>
      <p>
        <span>{BUILT_WORDS[fact.what]}</span>
        {[fact, ...others].map((word) => (
          <small key={word.by}>
            {words(word)} ({deviceName(design, word.by)})
          </small>
        ))}
      </p>
      <div className="buttons">
        {[fact, ...others].map((word) => (
          <button
            key={word.by}
            type="button"
            className={word === fact ? 'main' : 'plain'}
            disabled={disabled}
            onClick={() => recordBuilt(conductor, { what: word.what, value: word.value } as BuiltFact)}
          >
            {words(word)} is right
          </button>
        ))}
      </div>
    </li>
  )

  function words({ what, value }: BuiltFact): string {
    return value === null ? 'as drawn' : builtWords(design, what, value)
  }
}
