import { PACK_READERS } from '../../../engine'
import { ContentsList } from './ContentsList'
import { contentsOf, PAPERS, READERS } from './choice'
import { LabelStocks } from './LabelStocks'
import { choose, useMaking } from './making'
import { TakeAway } from './TakeAway'

/** Whom the pack is for, what it holds, how it is drawn, and what to take away. */
export function Choices() {
  const choice = useMaking((s) => s.choice)
  const { reader, paper, view, colouring } = choice
  return (
    <section className="choices-of-pack" aria-label="What is printed">
      <div className="inputs">
        <fieldset className="readers">
          <legend>Pack for the</legend>
          {READERS.map((r) => (
            <label key={r} className={r === reader ? 'chosen' : ''}>
              <input
                type="radio"
                name="reader"
                checked={r === reader}
                onChange={() => choose({ reader: r })}
              />
              {r.charAt(0).toUpperCase() + r.slice(1)}
            </label>
          ))}
        </fieldset>
        <div className="look">
          <label htmlFor="pack-paper">
            Paper
            <select
              id="pack-paper"
              value={paper}
              onChange={(e) => choose({ paper: PAPERS.find((p) => p === e.target.value) ?? paper })}
            >
              {PAPERS.map((p) => (
                <option key={p}>{p}</option>
              ))}
            </select>
          </label>
          <label htmlFor="pack-view">
            Drawn as
            <select
              id="pack-view"
              value={view}
              onChange={(e) =>
                choose({ view: e.target.value === 'both-poles' ? 'both-poles' : 'single-line' })
              }
            >
              <option value="single-line">Single-line</option>
              <option value="both-poles">Both poles</option>
            </select>
          </label>
          <label htmlFor="pack-black" className="tick">
            <input
              id="pack-black"
              type="checkbox"
              checked={colouring === 'black'}
              onChange={(e) => choose({ colouring: e.target.checked ? 'black' : 'colour' })}
            />
            Black ink only
          </label>
        </div>
        <ContentsList title={PACK_READERS[reader]} />
        {contentsOf(choice).includes('labels') && <LabelStocks />}
      </div>
      <TakeAway />
    </section>
  )
}
