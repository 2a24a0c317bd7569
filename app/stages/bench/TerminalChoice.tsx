import { type BenchCard, type BuiltFact, builtWords, type TerminalRef, terminalsOf } from '../../../engine'
import { useOpen } from '../../store/open'

interface Props {
  readonly card: BenchCard
  readonly end: 'from' | 'to'
  readonly disabled: boolean
  readonly onRecord: (fact: BuiltFact) => void
}

/** Where an end really goes: the part, then one of its terminals. */
export function TerminalChoice({ card, end, disabled, onRecord }: Props) {
  const design = useOpen((s) => s.design)
  const drawn = card.conductor[end]
  const now = card[end].at
  const part = design.parts.find((p) => p.id === now.part)
  const choose = (to: TerminalRef) => {
    const same = to.part === drawn.part && to.terminal === drawn.terminal
    onRecord({ what: end, value: same ? null : to })
  }
  const terminals = part ? terminalsOf(part, design.conductors) : []
  return (
    <div className="row">
      <span>
        Actual terminal, {end} <small>drawn {builtWords(design, end, drawn)}</small>
      </span>
      <select
        aria-label={`Actual part, ${end}`}
        value={now.part}
        disabled={disabled}
        onChange={(e) => {
          const to = design.parts.find((p) => p.id === e.target.value)
          const [first] = to ? terminalsOf(to, design.conductors) : []
          if (to && first) choose(to.id === drawn.part ? drawn : { part: to.id, terminal: first.key })
        }}
      >
        {design.parts
          .filter((p) => p.id === now.part || terminalsOf(p, design.conductors).length > 0)
          .map((p) => (
            <option key={p.id} value={p.id}>
              {p.designation} {p.name}
            </option>
          ))}
      </select>
      <select
        aria-label={`Actual terminal, ${end}`}
        value={now.terminal}
        disabled={disabled}
        onChange={(e) => choose({ part: now.part, terminal: e.target.value })}
      >
        {terminals.map((t) => (
          <option key={t.key} value={t.key}>
            {t.name || t.mark || t.key}
          </option>
        ))}
      </select>
    </div>
  )
}
