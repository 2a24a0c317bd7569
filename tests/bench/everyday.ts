import type { Conductor, Design, Part } from '../../engine/model/design'
import type { Values } from '../../engine/model/fields'
import { newConductor, newDesign } from '../../engine/model/newdesign'

/**
 * A design of everyday shape with about so many conductors: two batteries, a distribution bar, both shunts, blocks of
 * twelve loads with their returns on bars behind the load-side shunt.
 */
export function everyday(conductorCount: number): Design {
  const parts: Part[] = []
  const conductors: Conductor[] = []
  const part = (kind: string, values: Values): string => {
    const id = `p${parts.length}`
    parts.push({
      id,
      kind,
      designation: `X${parts.length}`,
      name: '',
      location: '',
      x: 0,
      y: 0,
      turn: 0,
      mirrored: false,
      values,
    })
    return id
  }
  const join = (a: string, at: string, b: string, bt: string, size: string, lengthM: number): void => {
    const n = conductors.length
    const ends = [
      { part: a, terminal: at },
      { part: b, terminal: bt },
    ] as const
    conductors.push({ ...newConductor(`c${n}`, `W${n}`, ...ends), size, lengthM })
  }
  const blocks = Math.max(1, Math.round((conductorCount - 12) / 26))
  const bar = part('busbar', { studs: 12, pole: 'positive', ratingA: 5000 })
  const battery = part('shunt', { role: 'battery', ratingA: 5000, data: 'none' })
  const load = part('shunt', { role: 'load', ratingA: 5000, data: 'none' })
  const negative = part('busbar', { studs: 12, pole: 'negative', ratingA: 5000 })
  const returns = part('busbar', { studs: 12, pole: 'negative', ratingA: 5000 })
  for (let i = 0; i < 2; i++) {
    const g = part('battery', { capacityAh: 200, dischargeA: 3000, chargeA: 1000, internalMOhm: 2 })
    const f = part('fuse-cartridge', { ratingA: 300, voltageV: 125, breakingKA: 20 })
    join(g, '+', f, '1', '120mm2', 0.1)
    join(f, '2', bar, `${i + 1}l`, '120mm2', 0.5)
    join(g, '-', battery, 'b', '120mm2', 0.5)
  }
  join(battery, 's', negative, '1l', '120mm2', 0.3)
  join(negative, '1r', load, 'b', '120mm2', 0.3)
  join(load, 's', returns, '1l', '120mm2', 0.3)
  for (let i = 0; i < blocks; i++) {
    const ways = Array.from({ length: 12 }, (_, w) => ({ ratingA: 10, label: `load ${w}` }))
    const f = part('fuse-bolt-in', { ratingA: 60, breakingKA: 5 })
    const block = part('fuse-block', { ways, ratingA: 100 })
    const back = part('busbar', { studs: 14, pole: 'negative', ratingA: 150 })
    join(bar, `${(i % 10) + 3}l`, f, '1', '35mm2', 0.2)
    join(f, '2', block, 'in', '16mm2', 1)
    join(back, '1l', returns, `${(i % 10) + 2}r`, '16mm2', 1)
    ways.forEach((_, w) => {
      const e = part('lamp', { currentA: 1 + (w % 4) })
      join(block, `${w + 1}`, e, '+', '2.5mm2', 2 + w / 4)
      join(e, '-', back, `${w + 2}r`, '2.5mm2', 2 + w / 4)
    })
  }
  return { ...newDesign('everyday'), parts, conductors }
}
