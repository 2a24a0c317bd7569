import type { Conductor, Design, Settings, TerminalRef } from './design'

export const DEFAULT_SETTINGS: Settings = {
  name: '',
  customer: '',
  vehicle: '',
  designer: '',
  revision: 'A',
  date: '',
  systemV: 12,
  ruleSet: 'metric-automotive',
  ambientC: 30,
  coldestC: 0,
  notes: '',
}

/** An empty design. `id` is permanent and must not belong to another design; the caller makes it, e.g. a UUID. */
export function newDesign(id: string, settings: Partial<Settings> = {}): Design {
  return { id, settings: { ...DEFAULT_SETTINGS, ...settings }, parts: [], conductors: [] }
}

/** A conductor of which only the ends are known. */
export function newConductor(id: string, number: string, from: TerminalRef, to: TerminalRef): Conductor {
  return {
    id,
    number,
    from,
    to,
    returnOf: null,
    size: null,
    lengthM: null,
    colour: 'BK',
    insulationC: null,
    sheathed: false,
    engineSpace: false,
    bunched: 1,
    designCurrent: null,
    remark: '',
    path: [],
  }
}
