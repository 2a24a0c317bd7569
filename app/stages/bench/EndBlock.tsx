import { useState } from 'react'
import { type BenchEnd, isNotKnown } from '../../../engine'
import { NumberInput } from '../../panels/NumberInput'
import { useOpen } from '../../store/open'
import { TORQUE_LIMITS } from './limits'
import { recordTorque } from './record'

/** One end: part, terminal, place, what is made up on it, and the torque where the maker's figure was read. */
export function EndBlock({ title, end }: { title: string; end: BenchEnd }) {
  return (
    <section className="end" aria-label={title}>
      <span className="which">{title}</span>
      <h3>{end.part}</h3>
      <p className="terminal">{end.terminal}</p>
      {end.location && <p className="where">{end.location}</p>}
      {end.fitting !== '' && (
        <p className="fitting">
          {isNotKnown(end.fitting) ? `? ${end.fitting.notKnown}` : end.fitting}
          {formOf(end) && <small>{formOf(end)}</small>}
        </p>
      )}
      {end.fitting !== '' && end.tightened !== false && <Torque end={end} />}
    </section>
  )
}

/** What the terminal is, where the fitting does not say it already. */
const formOf = ({ form, fitting }: BenchEnd): string =>
  form === 'not stated'
    ? 'Form of the terminal not stated: look at the part.'
    : typeof fitting === 'string' && fitting.includes(form)
      ? ''
      : `on ${form}`

function Torque({ end }: { end: BenchEnd }) {
  const [typing, setTyping] = useState(false)
  const disabled = useOpen((s) => s.hold !== 'writing')
  const known = end.newtonMetres !== null
  return (
    <div className="torque">
      <span>Torque</span>
      {typing ? (
        <NumberInput
          label={`Torque stated for ${end.part}, ${end.terminal}, N·m`}
          unit=""
          value={end.newtonMetres}
          {...TORQUE_LIMITS}
          onChange={(value) => {
            recordTorque(end.at, value)
            setTyping(false)
          }}
        />
      ) : (
        <>
          <b className={known ? '' : 'unknown'}>{known ? `${end.newtonMetres} N·m` : 'not stated'}</b>
          <button
            type="button"
            className="link"
            title="Type in the torque that the maker of the part states"
            disabled={disabled}
            onClick={() => setTyping(true)}
          >
            {known ? 'change' : 'maker’s figure…'}
          </button>
        </>
      )}
    </div>
  )
}
