import { describe, expect, it } from 'vitest'
import { arrange } from '../../../engine/sheets/arrange/arrange'
import type { ArrangeColumn, ArrangeLink, ArrangePart, Place } from '../../../engine/sheets/arrange/part'
import { routeAll } from '../../../engine/sheets/route/route'
import { layoutQuality } from '../../bench/layoutquality'
import { vanDrawing } from '../../bench/vandrawing'
import { Random } from '../../reference/random'

const van = vanDrawing()
const places = arrange(van.parts, van.links)
const at = (id: string): Place => places.get(id)!
const only = (column: ArrangeColumn): ArrangePart[] => van.parts.filter((p) => p.column === column)

function overlapping(parts: readonly ArrangePart[], placed: ReadonlyMap<string, Place>): string[] {
  return parts.flatMap((a, i) =>
    parts.slice(i + 1).flatMap((b) => {
      const [p, q] = [placed.get(a.id)!, placed.get(b.id)!]
      const isApart =
        p.x + a.w + 2.5 <= q.x || q.x + b.w + 2.5 <= p.x || p.y + a.h + 2.5 <= q.y || q.y + b.h + 2.5 <= p.y
      return isApart ? [] : [`${a.id} ${b.id}`]
    }),
  )
}

describe('an arranged van', () => {
  it('places every part on the grid, 2.5 mm apart at least, the same each time', () => {
    expect([...places.keys()]).toEqual(van.parts.map((p) => p.id))
    for (const { x, y } of places.values()) {
      expect(x % 2.5).toBe(0)
      expect(y % 2.5).toBe(0)
      expect(Math.min(x, y)).toBeGreaterThanOrEqual(0)
    }
    expect(overlapping(van.parts, places)).toEqual([])
    expect(arrange(van.parts, van.links)).toEqual(places)
  })

  it('is no larger than a readable sheet', () => {
    expect(Math.max(...van.parts.map((p) => at(p.id).x + p.w))).toBeLessThanOrEqual(540)
    expect(Math.max(...van.parts.map((p) => at(p.id).y + p.h))).toBeLessThanOrEqual(330)
  })

  it('reads from left to right: stores, main fuse, bar, block fuses, blocks, loads', () => {
    const order = ['G1', 'F11', 'F1', 'W+', 'F21', 'FB1', 'E101'].map((id) => at(id).x)
    expect(order).toEqual([...order].sort((a, b) => a - b))
    for (const load of only('load'))
      for (const store of only('store')) expect(at(load.id).x).toBeGreaterThan(at(store.id).x + store.w)
  })

  it('has sources above stores and bars, and each string in a row', () => {
    const lowest = Math.max(...only('source').map((p) => at(p.id).y + p.h))
    for (const id of ['G1', 'G2', 'G3', 'F1', 'W+', 'W-', 'WL']) expect(at(id).y).toBeGreaterThan(lowest)
    for (const k of [1, 2, 3]) {
      const row = [`PV${k}`, `FP${k}`, `T${k}`, `FT${k}`].map((id) => at(id).x)
      expect(row).toEqual([...row].sort((a, b) => a - b))
    }
  })

  it('has the loads of each block in the order of its ways, to its right', () => {
    for (const [block, loads] of [
      ['FB1', 12],
      ['FB3', 8],
    ] as const) {
      const column = Array.from({ length: loads }, (_, i) =>
        at(`E${block.slice(2)}${String(i + 1).padStart(2, '0')}`),
      )
      expect(column.map((p) => p.y)).toEqual(column.map((p) => p.y).sort((a, b) => a - b))
      for (const p of column) expect(p.x).toBeGreaterThan(at(block).x + 37.5)
    }
  })

  it('has relays between their block and their loads, and switches before the relays they work', () => {
    for (const k of [1, 2, 3, 4]) {
      expect(at(`K${k}`).x).toBeGreaterThan(at('FB2').x + 37.5)
      expect(at(`K${k}`).x).toBeLessThan(at('E201').x)
      expect(at(`S${k}`).x).toBeLessThan(at(`K${k}`).x)
    }
  })

  it('is routed without a fault', () => {
    const boxes = van.parts.map(({ id, w, h }) => ({ id, w, h, ...at(id) }))
    const port = ({ part, port: key }: ArrangeLink['from']) => {
      const p = van.parts.find((q) => q.id === part)!.ports.find((q) => q.id === key)!
      return { x: at(part).x + p.x, y: at(part).y + p.y, side: p.side }
    }
    const requests = van.links.map((l, i) => ({ id: `w${i}`, from: port(l.from), to: port(l.to) }))
    const { routes, stats } = routeAll(boxes, requests)
    expect(stats.failed).toBe(0)
    const ways = requests.map((r, i) => ({ ...r, points: routes[i]!.points }))
    expect(layoutQuality(boxes, ways)).toMatchObject({ overlaps: 0, tooNear: 0, touches: 0, passes: 0 })
  })
})

describe('arranging anything', () => {
  it('strewn parts and links: on the grid and apart', () => {
    const columns = ['store', 'source', 'protection', 'distribution', 'switching', 'load', 'data'] as const
    for (let seed = 1; seed <= 40; seed++) {
      const random = new Random(seed)
      const parts = Array.from({ length: random.whole(0, 30) }, (_, i): ArrangePart => {
        const [w, h] = [2.5 * random.whole(2, 12), 2.5 * random.whole(2, 20)]
        const side = random.chance(0.5) ? ('left' as const) : ('right' as const)
        return {
          id: `p${i}`,
          w,
          h,
          column: random.pick(columns),
          ports: [
            { id: 'a', x: 0, y: 2.5, side: 'left' },
            { id: 'b', x: side === 'left' ? 0 : w, y: h - 2.5, side },
          ],
        }
      })
      const end = () => ({ part: random.pick(parts).id, port: random.pick(['a', 'b']) })
      const links =
        parts.length === 0
          ? []
          : Array.from({ length: random.whole(0, 50) }, () => ({ from: end(), to: end() }))
      const placed = arrange(parts, links)
      expect([...placed.keys()]).toEqual(parts.map((p) => p.id))
      expect(overlapping(parts, placed)).toEqual([])
      for (const { x, y } of placed.values()) expect([x % 2.5, y % 2.5]).toEqual([0, 0])
    }
  })

  it('refuses links to ports that are not there', () => {
    const part = only('store')[0]!
    const link = { from: { part: part.id, port: '+' }, to: { part: 'nobody', port: '+' } }
    expect(() => arrange([part], [link])).toThrow(RangeError)
  })
})
