import {
  CHARGE_STAGES,
  type ChargeStage,
  type Control,
  type OperatingChange,
  type OperatingState,
} from '../../engine'

/** Is it on: closed, in, in use? Of a changeover: not in its first position. */
export function isOn(control: Control, state: OperatingState): boolean {
  switch (control.is) {
    case 'contact':
      return !state.open.has(control.id)
    case 'fuse':
      return !state.blown.has(control.id)
    case 'throw':
      return state.throws.get(control.id) !== control.positions[0]
    case 'load':
      return (state.loads.get(control.id) ?? 1) > 0
    case 'source':
      return (state.sources.get(control.id) ?? 0) > 0
    case 'charge':
      return (state.charge.get(control.id) ?? 1) > 0
    case 'stage':
      return stageOf(control.id, state) !== 'bulk'
  }
}

const stageOf = (id: string, state: OperatingState): ChargeStage => state.stages?.get(id) ?? 'bulk'

/** What a touch does: opens or closes, takes out or puts in, turns on or off, goes on to the next position or stage. */
export function flipOf(control: Control, state: OperatingState): OperatingChange {
  const { id } = control
  const on = isOn(control, state)
  switch (control.is) {
    case 'contact':
      return { set: 'contact', id, open: on }
    case 'fuse':
      return { set: 'fuse', id, out: on }
    case 'throw': {
      const at = control.positions.indexOf(state.throws.get(id) ?? '')
      return { set: 'throw', id, position: control.positions[(at + 1) % control.positions.length]! }
    }
    case 'stage': {
      const next = CHARGE_STAGES.indexOf(stageOf(id, state)) + 1
      return { set: 'stage', id, stage: CHARGE_STAGES[next % CHARGE_STAGES.length]! }
    }
    default:
      return { set: control.is, id, share: on ? 0 : 1 }
  }
}

/** The state of a control in one or two words. */
export function stateWords(control: Control, state: OperatingState): string {
  const on = isOn(control, state)
  switch (control.is) {
    case 'contact':
      return on ? 'closed' : 'open'
    case 'fuse':
      return on ? 'in' : 'out'
    case 'throw':
      return `at ${state.throws.get(control.id) ?? control.positions[0]}`
    case 'load':
      return share(state.loads.get(control.id) ?? 1)
    case 'source':
      return share(state.sources.get(control.id) ?? 0)
    case 'charge':
      return `${Math.round((state.charge.get(control.id) ?? 1) * 100)} % full`
    case 'stage':
      return stageOf(control.id, state)
  }
}

const share = (of: number): string => (of === 0 ? 'off' : of === 1 ? 'on' : `${Math.round(of * 100)} %`)

/**
 * The controls that a touch on a part means: its only one, both poles of a switch, or of a block of fuses the way at
 * `terminal`, the nearest one to the touch. Empty: the part has none, or it is not clear which.
 */
export function meant(controls: readonly Control[], terminal: string | null): readonly Control[] {
  const flipped = controls.filter((c) => c.is !== 'charge' && c.is !== 'stage')
  const poles = flipped.every((c) => c.is === 'contact')
  if (flipped.length <= 1 || poles) return flipped
  return flipped
    .filter((c) => terminal !== null && c.id.slice(c.id.indexOf('/') + 1) === wayOf(terminal))
    .slice(0, 1)
}

/** "3r", the return of way 3, is way 3. */
const wayOf = (terminal: string): string => /^\d+/.exec(terminal)?.[0] ?? terminal
