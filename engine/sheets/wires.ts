import { netsOf } from '../edit/nets'
import { boxOf } from '../kinds/place'
import type { Design, Part } from '../model/design'
import { partById } from '../model/lookup'
import type { XY } from '../model/marks'
import { sizeIn } from '../model/sizes'
import type { Flag } from './flags'
import type { Nature } from './nature'
import { portOf } from './ports'
import type { RouteBox, Routed, RouteRequest } from './route/request'
import { type RouteOptions, routeAll } from './route/route'
import type { SceneConductor } from './scene'
import type { Shown } from './shown'

export interface Wires {
  readonly conductors: readonly SceneConductor[]
  readonly joins: readonly XY[]
}

/** Ways of the shown conductors around the parts and their labels, to a flag where one end is elsewhere. Cost: that of the router. */
export function wiresOf(
  design: Design,
  shown: readonly Shown[],
  natureOf: (c: Shown['conductor']) => Nature,
  obstacles: readonly RouteBox[],
  flags: readonly Flag[],
  previous: readonly SceneConductor[],
  options: RouteOptions = {},
): Wires {
  const nets = netsOf(design)
  const flagAt = new Map(flags.map((f) => [`${f.conductor} ${f.end}`, f.port]))
  const requests: RouteRequest[] = []
  for (const { conductor: c } of shown) {
    const from = flagAt.get(`${c.id} from`) ?? portOf(design, c.from)
    const to = flagAt.get(`${c.id} to`) ?? portOf(design, c.to)
    if (!from || !to) continue
    requests.push({
      id: c.id,
      from,
      to,
      group: String(nets.netOf(c.from)),
      weight: sizeIn(design, c.size)?.sectionMm2 ?? 1,
      fixed: flags.length === 0 ? c.path : [],
    })
  }
  const { routes, joins } = routeAll(obstacles, requests, previous.map(before), options)
  const wayOf = new Map(routes.map((r) => [r.id, r]))
  return {
    conductors: shown.map(({ conductor: c, withReturn }) => ({
      id: c.id,
      from: c.from,
      to: c.to,
      points: wayOf.get(c.id)?.points.map(({ x, y }): XY => [x, y]) ?? straight(design, c),
      nature: natureOf(c),
      withReturn: withReturn?.id ?? null,
      routed: wayOf.get(c.id)?.ok ?? false,
    })),
    joins: joins.map(({ x, y }): XY => [x, y]),
  }
}

const before = (c: SceneConductor): Routed => ({
  id: c.id,
  points: c.points.map(([x, y]) => ({ x, y })),
  ok: c.routed,
})

/** For an end whose terminal is no longer there, such as a way that was taken off its block: from middle to middle. */
function straight(design: Design, { from, to }: Shown['conductor']): XY[] {
  const ends = [from, to].map((ref): XY | null => {
    const port = portOf(design, ref)
    const part = partById(design, ref.part)
    return port ? [port.x, port.y] : part ? middleOf(part) : null
  })
  const a = ends[0] ?? ends[1] ?? ORIGIN
  const b = ends[1] ?? a
  return [a, [b[0], a[1]], b]
}

const ORIGIN: XY = [0, 0]

function middleOf(part: Part): XY {
  const { x, y, w, h } = boxOf(part)
  return [x + w / 2, y + h / 2]
}
