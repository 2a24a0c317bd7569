import { useState } from 'react'
import { BENCH_BOUNDS, type BenchCard, type BuiltFact, builtWords, sizesIn } from '../../../engine'
import { NumberInput } from '../../panels/NumberInput'
import { useOpen } from '../../store/open'
import { LENGTH_LIMITS } from './limits'
import { recordAsDrawn, recordBuilt } from './record'
import { TerminalChoice } from './TerminalChoice'

/** It opens below the card, where a small screen does not reach. */
const intoView = (form: HTMLElement | null): void => form?.scrollIntoView({ block: 'start' })

/** Records what a conductor is like where it was built otherwise than drawn. */
export function BuiltForm({ card, onClose }: { card: BenchCard; onClose: () => void }) {
  const design = useOpen((s) => s.design)
  const disabled = useOpen((s) => s.hold !== 'writing')
  const { conductor: c, differences } = card
  const [note, setNote] = useState(card.note ?? '')
  const built = (what: BuiltFact['what']) => differences.find((d) => d.what === what)?.built ?? null
  const record = (fact: BuiltFact) => recordBuilt(c, fact)
  const size = (built('size') as string | null) ?? c.size ?? ''
  return (
    <section className="built-form" aria-label="Built otherwise" ref={intoView}>
      <p>Record what is really there. The drawing stays as it is; the checks look at what was built too.</p>
      <label>
        <span>
          Actual size <small>drawn {builtWords(design, 'size', c.size)}</small>
        </span>
        <select
          aria-label="Actual size"
          value={size}
          disabled={disabled}
          onChange={(e) => record({ what: 'size', value: e.target.value === c.size ? null : e.target.value })}
        >
          {c.size === null && <option value="">not stated</option>}
          {sizesIn(design).map((s) => (
            <option key={s.key} value={s.key}>
              {s.name}
            </option>
          ))}
        </select>
      </label>
      <div className="row">
        <span>
          Actual length, lug to lug <small>drawn {builtWords(design, 'lengthM', c.lengthM)}</small>
        </span>
        <NumberInput
          label="Actual length"
          unit="m"
          value={(built('lengthM') as number | null) ?? c.lengthM}
          {...LENGTH_LIMITS}
          disabled={disabled}
          onChange={(value) => record({ what: 'lengthM', value: value === c.lengthM ? null : value })}
        />
      </div>
      {(['from', 'to'] as const).map((end) => (
        <TerminalChoice key={end} card={card} end={end} disabled={disabled} onRecord={record} />
      ))}
      <label>
        <span>Remark of the workshop</span>
        <textarea
          aria-label="Remark of the workshop"
          rows={2}
          maxLength={BENCH_BOUNDS.note}
          value={note}
          disabled={disabled}
          onChange={(e) => setNote(e.target.value)}
          onBlur={() => {
            const value = note.trim() === '' ? null : note.trim()
            if (value !== card.note) record({ what: 'note', value })
          }}
        />
      </label>
      <div className="buttons">
        {differences.length > 0 && (
          <button
            type="button"
            className="plain"
            disabled={disabled}
            onClick={() =>
              recordAsDrawn(
                c,
                differences.map((d) => d.what),
              )
            }
          >
            As drawn after all
          </button>
        )}
        <button type="button" className="main" onClick={onClose}>
          Done
        </button>
      </div>
    </section>
  )
}
