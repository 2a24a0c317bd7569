import { MAKING_BOUNDS, type Making, makingOf, USUAL_MAKING } from '../../../engine'
import { NumberInput } from '../../panels/NumberInput'
import { TextInput } from '../../panels/TextInput'
import { doEdit, useOpen } from '../../store/open'

const LENGTHS = [
  ['allowanceM', 'Added at each end'],
  ['thinStockM', 'Stock length up to 10 mm²'],
  ['thickStockM', 'Stock length above'],
] as const satisfies readonly (readonly [keyof Making, string])[]

/** How this workshop makes conductors up; the tables below follow. */
export function MakingFields() {
  const making = useOpen((s) => makingOf(s.design))
  const own = useOpen((s) => s.design.making !== undefined)
  const writing = useOpen((s) => s.hold === 'writing')
  const set = (change: Partial<Making>) =>
    doEdit('How conductors are made up', { do: 'making', making: { ...making, ...change } })
  return (
    <section className="making" aria-label="How conductors are made up">
      {LENGTHS.map(([key, label]) => (
        <label key={key} htmlFor={`making-${key}`}>
          <span>{label}</span>
          <NumberInput
            id={`making-${key}`}
            unit="m"
            value={making[key]}
            min={MAKING_BOUNDS[key][0]}
            max={MAKING_BOUNDS[key][1]}
            disabled={!writing}
            onChange={(value) => set({ [key]: value ?? USUAL_MAKING[key] })}
          />
        </label>
      ))}
      <label htmlFor="making-currency">
        <span>Prices in</span>
        <TextInput
          id="making-currency"
          value={making.currency}
          placeholder="EUR"
          disabled={!writing}
          onChange={(currency) => set({ currency: currency.trim().slice(0, 12) })}
        />
      </label>
      {own ? (
        <button
          type="button"
          className="link"
          disabled={!writing}
          onClick={() => doEdit('Made up as usual', { do: 'making', making: null })}
        >
          As usual again
        </button>
      ) : (
        <small>Usual figures: common practice, no source.</small>
      )}
    </section>
  )
}
