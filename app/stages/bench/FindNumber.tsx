import { Search } from 'lucide-react'
import { useState } from 'react'
import { type BenchCard, cardsNumbered } from '../../../engine'
import { takeUp } from './looking'

/** More than this is not read with gloves on: type another figure. */
const MOST = 6

/** Finds a conductor by its number, typed on a numeric pad: 12 finds W12. */
export function FindNumber({ cards }: { cards: readonly BenchCard[] }) {
  const [typed, setTyped] = useState('')
  const found = cardsNumbered(cards, typed)
  const take = (card: BenchCard | undefined) => {
    if (!card) return
    setTyped('')
    takeUp(card.conductor.id)
  }
  return (
    <search className="bench-find">
      <Search size={22} aria-hidden />
      <input
        inputMode="numeric"
        enterKeyHint="go"
        autoComplete="off"
        aria-label="Conductor number"
        placeholder="Number"
        value={typed}
        onChange={(e) => setTyped(e.target.value)}
        onKeyDown={(e) => {
          if (e.key === 'Enter') {
            e.currentTarget.blur()
            take(found[0])
          }
          if (e.key === 'Escape') setTyped('')
        }}
      />
      {typed.trim() !== '' && (
        <ul aria-label="Conductors found">
          {found.slice(0, MOST).map((card) => (
            <li key={card.conductor.id}>
              <button type="button" onClick={() => take(card)}>
                <b>{card.number}</b>
                <span>
                  {card.from.part} → {card.to.part}
                </span>
              </button>
            </li>
          ))}
          {found.length > MOST && <li className="quiet">{found.length - MOST} more: type another figure.</li>}
          {found.length === 0 && <li className="quiet">No conductor has this number.</li>}
        </ul>
      )}
    </search>
  )
}
