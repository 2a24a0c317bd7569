import type { Design, TerminalRef } from '../model/design'
import type { Refusal } from './edit'
import { netsOf, type PlacedDevice } from './nets'
import { refuse } from './refuse'

/**
 * Positive against negative. A net whose devices all sit with their positive terminal in it is positive, one with
 * negative terminals only is negative; between batteries of a series bank it is neither, and nothing is refused.
 * Joining positive to negative is accepted only as a link of a series bank or of a string of PV modules.
 */
export function polesClash(design: Design, from: TerminalRef, to: TerminalRef): Refusal | null {
  const nets = netsOf(design)
  const terminals = [nets.terminal(from)!, nets.terminal(to)!]
  if (terminals.some((t) => t.pole === 'sense' || t.pole === 'data' || t.pole === 'mains')) return null
  const a = nets.netOf(from)
  const b = nets.netOf(to)
  if (a === b) return null
  const shorted =
    nets.positives(a).find((p) => isIn(p, nets.negatives(b))) ??
    nets.positives(b).find((p) => isIn(p, nets.negatives(a)))
  if (shorted)
    return refuse(
      'short-circuit',
      `This would join both poles of ${shorted.part.designation}: a short circuit.`,
    )
  return clash(nets.positives(a), nets.negatives(a), nets.positives(b), nets.negatives(b)) ?? null
}

type Devices = readonly PlacedDevice[]

const isIn = (p: PlacedDevice, others: Devices): boolean =>
  others.some((o) => o.part === p.part && o.device.key === p.device.key)

function clash(plusA: Devices, minusA: Devices, plusB: Devices, minusB: Devices): Refusal | null {
  const [plus, minus] =
    minusA.length === 0 && plusB.length === 0
      ? [plusA, minusB]
      : plusA.length === 0 && minusB.length === 0
        ? [plusB, minusA]
        : []
  const positive = plus?.[0]
  const negative = minus?.[0]
  if (!plus || !minus || !positive || !negative) return null
  if (seriesLink(plus, minus)) return null
  return refuse(
    'poles',
    `The positive side of ${positive.part.designation} cannot go to the negative side of ${negative.part.designation}.`,
  )
}

/** Batteries in series, or PV arrays of the same kind in series: nothing else may hang between them yet. */
function seriesLink(plus: Devices, minus: Devices): boolean {
  const all = [...plus, ...minus]
  const kind = all[0]!.part.kind
  return (
    all.every((d) => d.device.role === 'battery') ||
    (all.every((d) => d.part.kind === kind && d.device.role === 'source') && kind === PV_ARRAY)
  )
}

const PV_ARRAY = 'pv-array'
