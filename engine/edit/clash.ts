import type { Design, TerminalRef } from '../model/design'
import type { Refusal } from './edit'
import { type Hold, netsOf } from './nets'
import { refuse } from './refuse'

type Holds = readonly Hold[]

/**
 * Positive against negative. A net that holds positive terminals only is positive, one with negative ones only is
 * negative; between the batteries of a series bank it is both, and nothing is refused. Positive is joined to
 * negative only as a link of a series bank or of a string of PV modules.
 */
export function polesClash(design: Design, from: TerminalRef, to: TerminalRef): Refusal | null {
  const nets = netsOf(design)
  for (const t of [from, to]) if (nets.terminal(t)?.pole === 'sense') return null
  const a = nets.netOf(from)
  const b = nets.netOf(to)
  if (a === b) return null
  const [plusA, minusA, plusB, minusB] = [
    nets.positives(a),
    nets.negatives(a),
    nets.positives(b),
    nets.negatives(b),
  ]
  const shorted = both(plusA, minusB) ?? both(plusB, minusA)
  if (shorted)
    return refuse(
      'short-circuit',
      `This would join both poles of ${shorted.part.designation}: a short circuit.`,
    )
  if (minusA.length === 0 && plusB.length === 0) return opposed(plusA, minusB)
  return plusA.length === 0 && minusB.length === 0 ? opposed(plusB, minusA) : null
}

/** A device with its positive terminal on one side and its negative one on the other. */
function both(plus: Holds, minus: Holds): Hold | undefined {
  const negatives = new Set(minus.map((m) => m.device && `${m.part.id}/${m.device.key}`))
  return plus.find((p) => p.device && negatives.has(`${p.part.id}/${p.device.key}`))
}

function opposed(plus: Holds, minus: Holds): Refusal | null {
  const positive = plus[0]
  const negative = minus[0]
  if (!positive || !negative || isSeriesLink([...plus, ...minus])) return null
  const [upper, lower] = [batteryIn(minus), batteryIn(plus)]
  if (upper && lower)
    return refuse(
      'poles',
      `To put ${lower.designation} and ${upper.designation} in series, link them before anything else joins there.`,
    )
  return refuse(
    'poles',
    `The positive side of ${positive.part.designation} cannot go to the negative side of ${negative.part.designation}.`,
  )
}

const batteryIn = (holds: Holds) => holds.find((h) => h.device?.role === 'battery')?.part

/** Batteries in series, or PV arrays in series: nothing else may hang between them yet. */
const isSeriesLink = (all: Holds): boolean =>
  all.every((h) => h.device?.role === 'battery') ||
  all.every((h) => h.device !== null && h.part.kind === PV_ARRAY)

const PV_ARRAY = 'pv-array'
