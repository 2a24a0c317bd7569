import { plainTerminalsIn } from '../edit/terminal'
import type { Design, Part, PartId } from '../model/design'
import { numberOf } from './ratings'
import { found, type Rule } from './rule'

/** L1: a part with a wired data lead that reaches no hub, while the design has one. Facts count needs and ports. */
export const ports: Rule = {
  id: 'L1',
  looksFor: 'wired data leads that reach no hub, and ports that are too few',
  check: ({ design, poles }) => {
    const hubs = design.parts.filter((p) => p.kind === 'monitor-hub')
    if (hubs.length === 0) return []
    const reached = reachedFrom(
      design,
      hubs.map((h) => h.id),
      poles,
    )
    return (['data', 'tank', 'temp'] as const).flatMap((input) => {
      const needing = design.parts.filter((p) => inputOf(p) === input)
      const devices = needing.filter((p) => !reached.has(p.id)).map((p) => p.id)
      if (devices.length === 0) return []
      return [
        found(
          'L1',
          'warning',
          'rating',
          { parts: devices },
          { devices, input },
          {
            actual: { value: needing.length, unit: '' },
            limit: { value: portsThere(design, input), unit: '' },
          },
        ),
      ]
    })
  },
}

type Input = 'data' | 'tank' | 'temp'

/** Which input of a hub the part needs; null for none, and for what offers inputs itself. */
function inputOf(part: Part): Input | null {
  if (part.kind === 'monitor-hub' || part.kind === 'data-expander') return null
  if (!(plainTerminalsIn(part) ?? []).some((t) => t.pole === 'data')) return null
  if (part.kind === 'tank-sender') return 'tank'
  return part.kind === 'temperature-sender' ? 'temp' : 'data'
}

/** Ports of one type that are there: an expander takes one and offers several. */
function portsThere(design: Design, input: Input): number {
  const field = { data: 'dataPorts', tank: 'tankInputs', temp: 'temperatureInputs' }[input]
  return design.parts.reduce((sum, part) => {
    if (part.kind === 'monitor-hub') return sum + (numberOf(part, field) ?? 0)
    if (part.kind === 'data-expander' && input === 'data') return sum + (numberOf(part, 'ports') ?? 0) - 1
    return sum
  }, 0)
}

/** Parts that data conductors lead to from the hubs; data passes through expanders only. */
function reachedFrom(
  design: Design,
  hubs: readonly PartId[],
  poles: ReadonlyMap<string, string>,
): Set<PartId> {
  const links = new Map<PartId, PartId[]>()
  for (const c of design.conductors) {
    if (poles.get(`${c.from.part}/${c.from.terminal}`) !== 'data') continue
    links.set(c.from.part, [...(links.get(c.from.part) ?? []), c.to.part])
    links.set(c.to.part, [...(links.get(c.to.part) ?? []), c.from.part])
  }
  const passes = new Set(design.parts.filter((p) => p.kind === 'data-expander').map((p) => p.id))
  const reached = new Set(hubs)
  const open = [...hubs]
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    if (!passes.has(at) && !hubs.includes(at)) continue
    for (const next of links.get(at) ?? []) {
      if (reached.has(next)) continue
      reached.add(next)
      open.push(next)
    }
  }
  return reached
}
