import { terminalsOf } from '../kinds/place'
import type { Design, TerminalRef } from '../model/design'
import { partById } from '../model/lookup'
import type { RoutePort } from './route/request'

/** Where a terminal stands on the sheet and which way it faces; undefined for one that is no longer there. */
export function portOf(design: Design, ref: TerminalRef): RoutePort | undefined {
  const part = partById(design, ref.part)
  return part && terminalsOf(part, design.conductors).find((t) => t.key === ref.terminal)
}
