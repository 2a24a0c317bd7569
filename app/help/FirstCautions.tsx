import { TriangleAlert } from 'lucide-react'
import { useState } from 'react'
import { CAUTIONS, LAST_WORD } from '../../engine'
import { readPreference, writePreference } from '../files/preference'
import { offerRound } from './round/round'

/** The cautions on the first screen, until they have been read once in this browser. */
export function FirstCautions() {
  const [read, setRead] = useState(() => readPreference('cautions') === 'read')
  if (read) return null
  return (
    <section className="first-cautions" aria-label="Cautions before you begin">
      <h2>
        <TriangleAlert size={16} aria-hidden /> Before you begin
      </h2>
      <ul className="cautions">
        {CAUTIONS.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <p>{LAST_WORD}</p>
      <button
        type="button"
        className="main"
        onClick={() => {
          writePreference('cautions', 'read')
          setRead(true)
          offerRound()
        }}
      >
        I have read this
      </button>
    </section>
  )
}
