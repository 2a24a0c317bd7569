import type { Volts } from '../../../units'
import { valuesOf } from '../../fusefacts'
import type { PlannedDevice } from '../../operating/plan'
import type { OperatingPoint } from '../../operating/state'
import { around, volts as liveVolts, notKnown } from '../expect'
import { missingRuns } from '../guesses'
import { DROP_SHARE, DROP_VOLTS, FAR_LOADS, SURFACE_SHARE } from '../practice'
import { polesOf, supplyPosts, volts } from '../probes'
import { onlyThese, type Rig, switchedOn, withLow } from '../rig'
import type { Expected, Probe, TestStep } from '../step'
import { allAtOnce } from '../together'

interface Far {
  readonly x: PlannedDevice
  readonly high: Probe
  readonly low: Probe
  readonly postsV: number
  readonly dropV: number
}

/** Loads that lose the most on the way, and the critical ones, with everything on: posts against load. */
export function farLoadSteps(rig: Rig): TestStep[] {
  const { on, left } = allAtOnce(rig)
  const state = onlyThese(
    rig,
    on.map((x) => x.id),
  )
  const point = rig.at(state)
  if (!point.ok) return []
  const low = rig.at(withLow(state))
  const typical = guessedPosts(point)
  const lost = on
    .flatMap((x) => dropOf(rig, point, x))
    .sort((a, b) => b.dropV / b.postsV - a.dropV / a.postsV)
  const chosen = lost.filter(({ x }, i) => i < FAR_LOADS || isCritical(rig, x))
  const without = left.length > 0 ? { without: [...new Set(left.map((x) => x.part))] } : {}
  return chosen.map(
    ({ x, high, low: foot, postsV, dropV }): TestStep => ({
      key: `far-loads/${x.id}`,
      group: 'far-loads',
      tells: 'far-load',
      parts: [x.part],
      conductors: [],
      cautions: ['heavy-current', 'moves'],
      setting: {
        loads: 'all',
        on: switchedOn(
          rig,
          on.map((l) => l.id),
        ),
        ...without,
      },
      readings: [
        {
          key: 'posts',
          asks: 'posts',
          instrument: 'voltmeter',
          at: [high, foot],
          conductors: [],
          expected: typical ?? liveVolts(postsV, ...(low.ok ? [volts(rig, low, high, foot)] : [])),
        },
        {
          key: 'load',
          asks: 'at-load',
          instrument: 'voltmeter',
          at: polesOf(x),
          conductors: [],
          expected: missingRuns(rig, x.id) ?? leftOf(postsV, dropV),
        },
      ],
    }),
  )
}

/** Held against the posts as they are measured; until then within what a battery may stand at. */
function leftOf(postsV: Volts, dropV: Volts): Expected {
  const amount = DROP_SHARE * dropV + DROP_VOLTS
  return around('V', [postsV - dropV], SURFACE_SHARE, amount, {
    against: {
      reading: 'posts',
      times: 1,
      plus: 0 - Number(dropV.toFixed(2)),
      share: 0,
      amount: Number(amount.toFixed(2)),
    },
  })
}

/** The posts of a battery whose internal resistance is a guess stand nobody knows where under a heavy load. */
function guessedPosts(point: OperatingPoint): Expected | null {
  const guessed = point.notes.filter((n) => n.note === 'typical-resistance').flatMap((n) => n.parts)
  return guessed.length === 0 ? null : notKnown('no-internal-resistance', guessed)
}

function dropOf(rig: Rig, point: OperatingPoint, x: PlannedDevice): Far[] {
  const posts = supplyPosts(rig, polesOf(x)[0])
  const left = point.devices.get(x.id)
  if (!posts || !left || !(left.amps < 0)) return []
  const [high, low] = posts
  const postsV = volts(rig, point, high, low)
  return [{ x, high, low, postsV, dropV: postsV - left.volts }]
}

const isCritical = (rig: Rig, { part }: PlannedDevice): boolean =>
  valuesOf(rig.design, part)('service') === 'critical'
