import type { Connection, OnConnectEnd } from 'reactflow'
import type { PartId, TerminalRef } from '../../engine'
import { partById, terminalsOf } from '../../engine'
import { join } from '../store/join'
import { useOpen } from '../store/open'
import { select } from '../store/view'
import { PX } from './scale'

/** From one handle to another, by drag or by two taps. */
export function joinTerminals(c: Connection): void {
  if (!c.sourceHandle || !c.targetHandle) return
  const run = join({ part: c.source, terminal: c.sourceHandle }, { part: c.target, terminal: c.targetHandle })
  // The second tap goes on to select its part; the conductor is what was meant.
  if (run) setTimeout(() => select([], [run]))
}

/** Let go over a part rather than on a terminal: the nearest terminal of it is meant. */
export const joinOnPart: OnConnectEnd = (event, { fromHandle, toHandle }) => {
  const at = 'changedTouches' in event ? event.changedTouches[0] : event
  if (at && fromHandle?.id && !toHandle) joinAt({ part: fromHandle.nodeId, terminal: fromHandle.id }, at)
}

function joinAt(from: TerminalRef, { clientX, clientY }: { clientX: number; clientY: number }): void {
  const box = document.elementFromPoint(clientX, clientY)?.closest<HTMLElement>('[data-part]')
  const id: PartId | undefined = box?.dataset.part
  const part = id === undefined ? undefined : partById(useOpen.getState().design, id)
  if (!box || !part || part.id === from.part) return
  const rect = box.getBoundingClientRect()
  const zoom = rect.width / box.offsetWidth
  const distance = (x: number, y: number) =>
    Math.hypot(rect.left + (x - part.x) * PX * zoom - clientX, rect.top + (y - part.y) * PX * zoom - clientY)
  const nearest = [...terminalsOf(part)].sort((a, b) => distance(a.x, a.y) - distance(b.x, b.y))[0]
  if (nearest) join(from, { part: part.id, terminal: nearest.key })
}
