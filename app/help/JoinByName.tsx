import { useState } from 'react'
import { canJoin, conductorsAt, type PartId, partById, type TerminalRef, terminalsOf } from '../../engine'
import { join, terminalName } from '../store/join'
import { matching } from '../store/matching'
import { useOpen } from '../store/open'
import { PickList } from './PickList'
import { Sheet } from './Sheet'
import { TerminalPick } from './TerminalPick'

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
  return (
    <Sheet title={`Join ${terminalName(start)} to …`} narrow onClose={onClose}>
      <TerminalPick
        except={from}
        refusal={(to) => canJoin(design, start, to)}
        onPick={(to) => {
          onClose()
          join(start, to)
        }}
      />
    </Sheet>
  )
}

const joined = (numbers: readonly string[]): string => (numbers.length ? numbers.join(', ') : 'free')
