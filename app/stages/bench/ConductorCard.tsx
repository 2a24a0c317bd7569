import { useState } from 'react'
import { type BenchCard, colourName, figure, isNotKnown, type ScheduleCell } from '../../../engine'
import { showOnDrawing } from '../goto'
import { AsBuiltWords } from './AsBuiltWords'
import { BuiltForm } from './BuiltForm'
import { EndBlock } from './EndBlock'
import { Photos } from './Photos'
import { Steps } from './Steps'
import { swatch } from './swatch'

/** One conductor in hand: everything that must be known at once in large type, and the steps to tick. */
export function ConductorCard({ card }: { card: BenchCard }) {
  const [otherwise, setOtherwise] = useState(false)
  const { conductor, number, colour, work } = card
  return (
    <article className="bench-card">
      <header>
        <h2>{number}</h2>
        <p className="colour">
          <span className="swatch" style={swatch(colour)}>
            {colour}
          </span>
          {colourName(colour)}
        </p>
        <Fact title="Size" value={card.size} />
        {work === 'data' ? (
          <p className="fact">
            <span>Data lead</span>
            <b>comes made up</b>
          </p>
        ) : (
          <Fact title="Cut to" value={card.cut} unit="m" about={allowance(card)} />
        )}
        <p className="fact marker">
          <span>Marker, both ends</span>
          <b>{card.marker}</b>
        </p>
      </header>
      {work === 'mains' && (
        <p className="bench-warning danger">Mains: for licensed persons only. Nothing is to be done here.</p>
      )}
      <AsBuiltWords card={card} />
      <div className="ends">
        <EndBlock title="From" end={card.from} />
        <EndBlock title="To" end={card.to} />
      </div>
      <Steps card={card} />
      <dl className="beside">
        <Beside title="Protection" value={card.protection} />
        <Beside title="Sleeve over" value={card.sleeve} unit="mm" />
        <Beside title="Remark" value={card.remark} />
        <Beside title="Workshop" value={card.note ?? ''} />
      </dl>
      <div className="bench-more">
        <button
          type="button"
          className="plain"
          aria-expanded={otherwise}
          disabled={work === 'mains'}
          onClick={() => setOtherwise(!otherwise)}
        >
          Built otherwise
        </button>
        <Photos conductor={conductor} />
        <button type="button" className="plain" onClick={() => showOnDrawing({ conductors: [conductor.id] })}>
          On the drawing
        </button>
      </div>
      {otherwise && <BuiltForm card={card} onClose={() => setOtherwise(false)} />}
    </article>
  )
}

/** "2.60 m + 2 × 0.1 m" */
const allowance = ({ length, allowanceM }: BenchCard): string =>
  typeof length === 'number' ? `${length.toFixed(2)} m + 2 × ${figure(allowanceM, 'm')}` : ''

interface FactProps {
  readonly title: string
  readonly value: ScheduleCell
  readonly unit?: string
  readonly about?: string
}

function Fact({ title, value, unit = '', about = '' }: FactProps) {
  return (
    <p className="fact">
      <span>{title}</span>
      {isNotKnown(value) ? (
        <b className="unknown">? {value.notKnown}</b>
      ) : (
        <b>{typeof value === 'number' ? `${value.toFixed(2)} ${unit}` : value}</b>
      )}
      {about && <small>{about}</small>}
    </p>
  )
}

function Beside({ title, value, unit = '' }: FactProps) {
  if (value === '') return null
  const words = isNotKnown(value) ? `not checked: ${value.notKnown}` : `${value} ${unit}`.trim()
  return (
    <div>
      <dt>{title}</dt>
      <dd>{words}</dd>
    </div>
  )
}
