import type { PlannedShunt } from '../../operating/plan'
import { ampsWithin, notKnown } from '../expect'
import { LOAD_AMPS, LOAD_SHARE } from '../practice'
import { conductorsOn, probe } from '../probes'
import { fullAndLow, isPoint, onlyThese, type Rig, switchedOn } from '../rig'
import { shuntReadings } from '../shuntreading'
import type { Reading, TestStep } from '../step'
import { heaviestLoad } from '../together'

/** Every shunt: no more than the monitor takes while all else is off, and as the clamp meter when something flows. */
export function shuntSteps(rig: Rig): TestStep[] {
  const { shunts } = rig.plan
  if (shunts.length === 0) return []
  const load = heaviestLoad(rig)
  return shunts.flatMap((s) => [zeroStep(rig, s), clampStep(rig, s, load?.id)])
}

function zeroStep(rig: Rig, { part }: PlannedShunt): TestStep {
  const found = fullAndLow(rig, onlyThese(rig, []))
  const because = isPoint(found) ? null : notKnown('no-operating-point', found.parts)
  const readings = shuntReadings(rig, isPoint(found) ? found : [], null, because)
    .filter((r) => r.key === `shunt:${part}`)
    .map((r): Reading => ({ ...r, asks: 'shunt-zero' }))
  return {
    key: `shunts/${part}/zero`,
    group: 'shunts',
    tells: 'shunt-zero',
    parts: [part],
    conductors: [],
    cautions: [],
    setting: { loads: 'off', sources: [], on: [] },
    readings,
  }
}

function clampStep(rig: Rig, { part, branch: id }: PlannedShunt, load: string | undefined): TestStep {
  const found = load === undefined ? null : fullAndLow(rig, onlyThese(rig, [load]))
  const points = found && isPoint(found) ? found : []
  const because =
    points.length > 0 ? null : notKnown(load === undefined ? 'no-draw' : 'no-operating-point', [part])
  const { branch } = rig.plan.border.branches.get(id)!
  const sides = [probe(part, branch.to), probe(part, branch.from)]
  const at = sides.reduce((best, side) =>
    conductorsOn(rig, side).length < conductorsOn(rig, best).length ? side : best,
  )
  const amps = points.map((p) => Math.abs(p.shunts.get(part)?.shows ?? 0))
  const clamp: Reading = {
    key: 'amps',
    asks: 'current',
    instrument: 'clamp',
    at: [at],
    conductors: conductorsOn(rig, at),
    expected: because ?? ampsWithin(amps, LOAD_SHARE, LOAD_AMPS),
  }
  const display = shuntReadings(rig, points, { reading: 'amps', amps: amps[0] ?? 0 }, because)
  const device = rig.plan.devices.find((x) => x.id === load)
  return {
    key: `shunts/${part}/clamp`,
    group: 'shunts',
    tells: 'shunt-clamp',
    parts: [part],
    conductors: [],
    cautions: ['moves'],
    setting: device ? { loads: [device.part], on: switchedOn(rig, [device.id]) } : {},
    readings: [clamp, ...display.filter((r) => r.key === `shunt:${part}`)],
  }
}
