import { kindOf, type PartId, type Refusal, type TerminalRef, terminalsOf } from '../../engine'
import { matching } from '../store/matching'
import { useOpen } from '../store/open'
import { PickList } from './PickList'

interface Props {
  /** A part whose own terminals are left out; null: all are offered. */
  readonly except: PartId | null
  readonly refusal: (to: TerminalRef) => Refusal | null
  readonly onPick: (to: TerminalRef) => void
}

const MOST = 40

/** Every terminal of the design by designation, name or mark; those that would be refused say so. */
export function TerminalPick({ except, refusal, onPick }: Props) {
  const design = useOpen((s) => s.design)
  const targets = design.parts
    .filter((p) => p.id !== except)
    .flatMap((p) =>
      terminalsOf(p, design.conductors).map((t) => ({
        key: `${p.id} ${t.key}`,
        left: p.designation,
        text: [p.name || kindOf(p.kind)?.title, t.name || t.mark].filter(Boolean).join(', '),
        end: { part: p.id, terminal: t.key },
      })),
    )
  return (
    <PickList
      key="to"
      label="Terminal to join to"
      placeholder="Designation or name: F2, bar, fridge…"
      none="No terminal is called that."
      choices={(typed) =>
        matching(typed, targets, (t) => `${t.left} ${t.text}`)
          .slice(0, MOST)
          .map((t) => ({ ...t, right: refusal(t.end) ? 'refused' : '' }))
      }
      onPick={(key) => {
        const target = targets.find((t) => t.key === key)
        if (target) onPick(target.end)
      }}
    />
  )
}
