import type { Design } from '../model/design'
import type { Amps } from '../units'
import type { BranchAnswer } from './answers'
import type { StartAnswer } from './faultanswers'
import { valuesOf } from './fusefacts'
import type { Solved } from './solved'

interface Start extends StartAnswer {
  readonly device: number
  /** The whole of its starting current, A; `amps` is what comes on top of its running one. */
  readonly wholeA: Amps
}

/**
 * For every fuse and breaker, what flows while one load that batteries feed through it starts and everything else runs
 * at its worst; those loads only whose starting current is above their running one. No less than the load takes by itself:
 * what a battery may give for long does not hold back a start. Every contact closed. By branch id.
 */
export function startsOf(
  design: Design,
  s: Solved,
  branches: ReadonlyMap<string, BranchAnswer>,
): Map<string, readonly StartAnswer[]> {
  const extras = extrasOf(design, s)
  const batteries = batteriesByNet(s)
  const starts = new Map<string, readonly StartAnswer[]>()
  if (extras.length === 0) return starts
  for (const [id, { worst }] of branches) {
    const e = s.p.branchIndex.get(id)
    if (e === undefined || s.p.isFuse[e] !== 1) continue
    if (!('value' in worst) || worst.value.amps === 'unlimited') continue
    const running = worst.value.amps
    const here = passing(s, e, extras, batteries).map(
      ({ part, amps, wholeA, seconds }): StartAnswer => ({
        part,
        amps: Math.max(running + amps, wholeA),
        seconds,
      }),
    )
    if (here.length > 0) starts.set(id, here)
  }
  return starts
}

/** What starting each load adds to its running current. */
function extrasOf(design: Design, { border, p }: Solved): Start[] {
  return [...border.devices].flatMap(([id, ref]) => {
    const of = valuesOf(design, ref.part)
    const [times, seconds] = [of('inrush'), of('inrushS')]
    const min = ref.device.minA
    const device = p.deviceIndex.get(id)
    if (typeof times !== 'number' || typeof seconds !== 'number' || typeof min !== 'number') return []
    if (device === undefined || times <= 1 || seconds <= 0 || min === 0) return []
    return [{ part: ref.part, device, amps: (times - 1) * -min, wholeA: times * -min, seconds }]
  })
}

/** Devices with an emf, by the net of their positive terminals. */
function batteriesByNet({ p }: Solved): ReadonlyMap<number, readonly number[]> {
  const found = new Map<number, number[]>()
  p.form.devices.forEach((d, i) => {
    if (d.emf === undefined) return
    const net = p.net[p.positive[i]!]!
    const list = found.get(net)
    if (list) list.push(i)
    else found.set(net, [i])
  })
  return found
}

/** Those that batteries feed through a branch, each with the part of it that passes there. */
function passing(
  { p, envelope }: Solved,
  e: number,
  extras: readonly Start[],
  batteriesOf: ReadonlyMap<number, readonly number[]>,
): Start[] {
  const net = p.net[p.graph.tail[e]!]!
  const shares = envelope.few(e)
  const batteries = batteriesOf.get(net) ?? []
  return extras.flatMap((s) => {
    if (p.net[p.positive[s.device]!] !== net) return []
    const own = shares.get(s.device) ?? 0
    const share = Math.max(0, ...batteries.map((b) => Math.abs(own - (shares.get(b) ?? 0))))
    return share < 1e-6 ? [] : [{ ...s, amps: s.amps * share, wholeA: s.wholeA * share }]
  })
}
