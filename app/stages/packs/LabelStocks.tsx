import { LABEL_KINDS, LABEL_STOCKS } from '../../../engine'
import { KINDS, OWN_BOUNDS, type OwnSize, ownFault, type StockKey, stocksFor } from './labelchoice'
import { choose, useMaking } from './making'

const TITLES: Readonly<Record<'own' | 'heat-shrink', string>> = {
  own: 'Own size',
  'heat-shrink': 'Heat-shrink, by the conductor',
}
const titleOf = (key: StockKey): string =>
  key === 'own' || key === 'heat-shrink' ? TITLES[key] : LABEL_STOCKS[key].title

const FIGURES: Readonly<Record<keyof OwnSize, string>> = {
  w: 'Wide, mm',
  h: 'High, mm',
  columns: 'Across',
  rows: 'Down',
  gapX: 'Gap across, mm',
  gapY: 'Gap down, mm',
}

/** What the labels of the pack are printed on. */
export function LabelStocks() {
  const labels = useMaking((s) => s.choice.labels)
  const own = KINDS.some((kind) => labels[kind] === 'own')
  const fault = own ? ownFault(labels.own) : null
  const set = (change: Partial<typeof labels>) => choose({ labels: { ...labels, ...change } })
  return (
    <details className="label-stocks">
      <summary>What labels are printed on</summary>
      {KINDS.map((kind) => (
        <label key={kind} htmlFor={`stock-${kind}`}>
          {LABEL_KINDS[kind]}
          <select
            id={`stock-${kind}`}
            value={labels[kind]}
            onChange={(e) => {
              const key = stocksFor(kind).find((s) => s === e.target.value)
              if (key) set({ [kind]: key })
            }}
          >
            {stocksFor(kind).map((key) => (
              <option key={key} value={key}>
                {titleOf(key)}
              </option>
            ))}
          </select>
        </label>
      ))}
      <Figure
        id="labels-used"
        title="Used up on the first sheet"
        value={labels.used}
        bounds={[0, 300]}
        onChange={(used) => set({ used: Math.trunc(used) })}
      />
      {own && (
        <fieldset className="own-size">
          <legend>Own size, on A4</legend>
          {(Object.keys(FIGURES) as (keyof OwnSize)[]).map((key) => (
            <Figure
              key={key}
              id={`own-${key}`}
              title={FIGURES[key]}
              value={labels.own[key]}
              bounds={OWN_BOUNDS[key]}
              onChange={(value) => set({ own: { ...labels.own, [key]: value } })}
            />
          ))}
          {fault !== null && (
            <p className="failure" role="alert">
              {fault} The usual stock is taken until it fits.
            </p>
          )}
        </fieldset>
      )}
    </details>
  )
}

interface FigureProps {
  readonly id: string
  readonly title: string
  readonly value: number
  readonly bounds: readonly [number, number]
  readonly onChange: (value: number) => void
}

/** A figure within its bounds; what is beyond them is not taken. */
function Figure({ id, title, value, bounds: [least, most], onChange }: FigureProps) {
  return (
    <label htmlFor={id}>
      {title}
      <input
        id={id}
        type="number"
        key={value}
        defaultValue={value}
        min={least}
        max={most}
        step="any"
        onBlur={(e) => {
          const typed = e.target.valueAsNumber
          if (typed >= least && typed <= most) {
            if (typed !== value) onChange(typed)
          } else e.target.value = String(value)
        }}
        onKeyDown={(e) => e.key === 'Enter' && e.currentTarget.blur()}
      />
    </label>
  )
}
