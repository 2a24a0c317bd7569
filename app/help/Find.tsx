import { kindOf } from '../../engine'
import { terminalName } from '../store/join'
import { matching } from '../store/matching'
import { useOpen } from '../store/open'
import { lookAt, select } from '../store/view'
import { PickList } from './PickList'
import { Sheet } from './Sheet'

/** Finds a part by designation, name, location or kind, and a conductor by number or ends; selects and shows it. */
export function Find({ onClose }: { onClose: () => void }) {
  const design = useOpen((s) => s.design)
  const items = [
    ...design.parts.map((p) => ({
      key: `part ${p.id}`,
      left: p.designation,
      text: p.name || kindOf(p.kind)?.title || p.kind,
      right: p.location,
    })),
    ...design.conductors.map((c) => ({
      key: `run ${c.id}`,
      left: c.number,
      text: `${terminalName(c.from)} → ${terminalName(c.to)}`,
      right: c.remark,
    })),
  ]
  const pick = (key: string) => {
    const id = key.slice(key.indexOf(' ') + 1)
    onClose()
    if (key.startsWith('part')) {
      select([id])
      lookAt([id], [])
    } else {
      select([], [id])
      lookAt([], [id])
    }
  }
  return (
    <Sheet title="Find" narrow onClose={onClose}>
      <PickList
        label="Part or conductor"
        placeholder="F3, W12, fridge…"
        none="No part or conductor is called that."
        choices={(typed) => matching(typed, items, (i) => `${i.left} ${i.text} ${i.right}`)}
        onPick={pick}
      />
    </Sheet>
  )
}
