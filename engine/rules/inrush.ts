import { type FuseFacts, fuseFacts, valuesOf } from '../calc/fusefacts'
import type { Solved } from '../calc/solved'
import type { PartId } from '../model/design'
import { clearsBy, holdsAtLeast } from '../tables/fuseband'
import type { Amps, Seconds } from '../units'
import { type Case, found, type Rule } from './rule'

/** What starting one load adds to its running current. */
interface Start {
  readonly part: PartId
  readonly device: number
  readonly extraA: Amps
  readonly seconds: Seconds
}

/**
 * F2: the starting current of a load, on top of everything else that runs, may open a fuse. A warning where the slow edge
 * of the band is passed (it will open), a note inside the band (it may), not checked where no band is known.
 */
export const inrush: Rule = {
  id: 'F2',
  looksFor: 'fuses and breakers that a starting load may open',
  check: (c) => {
    const any = c.states[0]!.any
    const starts = startsOf(c, any)
    if (starts.length === 0) return []
    return [...fuseFacts(c.design, c.border)].flatMap(([id, of]) => {
      const e = any.p.branchIndex.get(id)
      const worst = c.answers.branches.get(id)?.worst
      if (e === undefined || of.ratingA === null || !worst || !('value' in worst)) return []
      if (worst.value.amps === 'unlimited') return []
      const running = worst.value.amps
      const judged = passing(any, e, starts)
        .map((s) => ({ ...s, amps: running + s.extraA, ...judge(of, running + s.extraA, s.seconds) }))
        .filter((s) => s.level !== null)
        .sort((a, b) => ORDER.indexOf(a.level!) - ORDER.indexOf(b.level!) || b.amps - a.amps)[0]
      if (!judged?.level) return []
      return [
        found(
          'F2',
          judged.level,
          of.band?.source ?? 'method',
          { parts: [of.part, judged.part] },
          {
            part: of.part,
            way: of.name,
            load: judged.part,
            lasts: judged.seconds,
            ...(judged.time === null ? {} : { time: judged.time }),
          },
          {
            about: of.key,
            actual: { value: judged.amps, unit: 'A' },
            limit: { value: of.ratingA, unit: 'A' },
          },
        ),
      ]
    })
  },
}

const ORDER = ['warning', 'note', 'not-checked']

type Judged = { level: 'warning' | 'note' | 'not-checked' | null; time: Seconds | null }

/** Up to its rating a device is taken to hold. */
function judge({ band, ratingA }: FuseFacts, amps: Amps, lasts: Seconds): Judged {
  if (amps <= ratingA! * (1 + 1e-9)) return { level: null, time: null }
  if (!band) return { level: 'not-checked', time: null }
  const held = holdsAtLeast(band, amps)
  if (held >= lasts) return { level: null, time: held }
  const opens = clearsBy(band, amps)
  return opens !== null && opens <= lasts ? { level: 'warning', time: opens } : { level: 'note', time: held }
}

function startsOf({ design }: Case, { border, p }: Solved): Start[] {
  return [...border.devices].flatMap(([id, ref]) => {
    const of = valuesOf(design, ref.part)
    const [times, seconds] = [of('inrush'), of('inrushS')]
    const min = ref.device.minA
    const device = p.deviceIndex.get(id)
    if (typeof times !== 'number' || typeof seconds !== 'number' || typeof min !== 'number') return []
    if (device === undefined || times <= 1 || seconds <= 0 || min === 0) return []
    return [{ part: ref.part, device, extraA: (times - 1) * -min, seconds }]
  })
}

/** Starts that batteries feed through a branch, each with the part of it that passes there. */
function passing({ p, envelope }: Solved, e: number, starts: readonly Start[]): Start[] {
  const net = p.net[p.graph.tail[e]!]!
  const shares = envelope.coefficients(e)
  const batteries = p.form.devices.flatMap((d, i) =>
    d.emf !== undefined && p.net[p.positive[i]!] === net ? [shares[i]!] : [],
  )
  return starts.flatMap((s) => {
    if (p.net[p.positive[s.device]!] !== net) return []
    const share = Math.max(0, ...batteries.map((b) => Math.abs(shares[s.device]! - b)))
    return share < 1e-6 ? [] : [{ ...s, extraA: s.extraA * share }]
  })
}
