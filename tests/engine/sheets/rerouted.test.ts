import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxOf, partById, readDesign, reroutedWays, sceneOf, terminalsOf, type XY } from '../../../engine'

const read = readDesign(readFileSync('public/demos/camping-trailer.json', 'utf8'))
if (!read.design) throw new Error('The demo cannot be read.')
const { design } = read
const scene = sceneOf(design, null, 'both-poles')

describe('ways of conductors whose part is carried', () => {
  it('leave no way out of place where the part stands as before', () => {
    const part = design.parts[3]!.id
    const laid = new Map(scene.conductors.map((c) => [c.id, c.points]))
    const ways = reroutedWays(design, scene, new Set([part]), [0, 0])
    expect(ways.size).toBeGreaterThan(0)
    for (const [id, points] of ways) expect(points).toEqual(laid.get(id))
  })

  it('run at right angles from terminal to terminal, and through no part', () => {
    const parts = fc.constantFrom(...design.parts.map((p) => p.id))
    const step = fc.integer({ min: -16, max: 16 }).map((n) => n * 2.5)
    fc.assert(
      fc.property(parts, step, step, (id, dx, dy) => {
        const there = design.parts.map((p) => (p.id === id ? { ...p, x: p.x + dx, y: p.y + dy } : p))
        const moved = { ...design, parts: there }
        for (const [run, points] of reroutedWays(design, scene, new Set([id]), [dx, dy])) {
          const c = design.conductors.find((k) => k.id === run)!
          expect([points[0], points.at(-1)]).toEqual([c.from, c.to].map(placeOf))
          for (const box of there.map((p) => boxOf(p, design.conductors)))
            for (let i = 1; i < points.length; i++)
              expect(passes(points[i - 1]!, points[i]!, box)).toBe(false)
        }
        function placeOf(ref: { readonly part: string; readonly terminal: string }): XY {
          const t = terminalsOf(partById(moved, ref.part)!, design.conductors).find(
            (k) => k.key === ref.terminal,
          )!
          return [t.x, t.y]
        }
      }),
      { numRuns: 30 },
    )
  })
})

/** Does a stretch at a right angle run through the inside of a box? */
function passes(a: XY, b: XY, { x, y, w, h }: ReturnType<typeof boxOf>): boolean {
  if (a[0] !== b[0] && a[1] !== b[1]) return true
  const [x1, x2] = [Math.min(a[0], b[0]), Math.max(a[0], b[0])]
  const [y1, y2] = [Math.min(a[1], b[1]), Math.max(a[1], b[1])]
  return x1 < x + w - 1e-6 && x2 > x + 1e-6 && y1 < y + h - 1e-6 && y2 > y + 1e-6
}
