import { useState } from 'react'
import {
  canJoin,
  conductorsAt,
  kindOf,
  type PartId,
  partById,
  type TerminalRef,
  terminalsOf,
} from '../../engine'
import { join, terminalName } from '../store/join'
import { matching } from '../store/matching'
import { useOpen } from '../store/open'
import { PickList } from './PickList'
import { Sheet } from './Sheet'

/** Joining without a pointer: choose a terminal of the selected part, then type where it goes. */
export function JoinByName({ from, onClose }: { from: PartId; onClose: () => void }) {
  const design = useOpen((s) => s.design)
  const [terminal, setTerminal] = useState<string | null>(null)
  const part = partById(design, from)
  if (!part) return null
  if (terminal === null)
    return (
      <Sheet title={`Join from ${part.designation}`} narrow onClose={onClose}>
        <PickList
          key="from"
          label="Terminal to join from"
          placeholder="Terminal"
          none="This part has no such terminal."
          choices={(typed) =>
            matching(
              typed,
              terminalsOf(part).map((t) => ({
                key: t.key,
                left: t.mark || t.key,
                text: t.name,
                right: joined(conductorsAt(design, from, t.key).map((c) => c.number)),
              })),
              (c) => `${c.left} ${c.text}`,
            )
          }
          onPick={setTerminal}
        />
      </Sheet>
    )
  const start: TerminalRef = { part: from, terminal }
  const targets = design.parts
    .filter((p) => p.id !== from)
    .flatMap((p) =>
      terminalsOf(p).map((t) => {
        const end = { part: p.id, terminal: t.key }
        return {
          key: `${p.id} ${t.key}`,
          left: p.designation,
          text: [p.name || kindOf(p.kind)?.title, t.name || t.mark].filter(Boolean).join(', '),
          end,
        }
      }),
    )
  return (
    <Sheet title={`Join ${terminalName(start)} to …`} narrow onClose={onClose}>
      <PickList
        key="to"
        label="Terminal to join to"
        placeholder="Designation or name: F2, bar, fridge…"
        none="No terminal is called that."
        choices={(typed) =>
          matching(typed, targets, (t) => `${t.left} ${t.text}`)
            .slice(0, 40)
            .map((t) => ({ ...t, right: canJoin(design, start, t.end) ? 'refused' : '' }))
        }
        onPick={(key) => {
          const target = targets.find((t) => t.key === key)
          onClose()
          if (target) join(start, target.end)
        }}
      />
    </Sheet>
  )
}

const joined = (numbers: readonly string[]): string => (numbers.length ? numbers.join(', ') : 'free')
