import { describe, expect, it } from 'vitest'
import { inverseDiagonal } from '../../../engine/math/inverse'
import { analyse, factorise, solve } from '../../../engine/math/sparse'
import { Random } from '../../reference/random'

/** Gaussian elimination with partial pivoting on the full matrix: the plain method. */
function dense(a: number[][], b: number[]): number[] {
  const n = b.length
  const m = a.map((r, i) => [...r, b[i]!])
  for (let c = 0; c < n; c++) {
    let p = c
    for (let r = c; r < n; r++) if (Math.abs(m[r]![c]!) > Math.abs(m[p]![c]!)) p = r
    ;[m[c], m[p]] = [m[p]!, m[c]!]
    for (let r = c + 1; r < n; r++) {
      const f = m[r]![c]! / m[c]![c]!
      if (f !== 0) for (let j = c; j <= n; j++) m[r]![j]! -= f * m[c]![j]!
    }
  }
  const x = new Array<number>(n).fill(0)
  for (let r = n - 1; r >= 0; r--) {
    let s = m[r]![n]!
    for (let j = r + 1; j < n; j++) s -= m[r]![j]! * x[j]!
    x[r] = s / m[r]![r]!
  }
  return x
}

/** Largest |A·x − b| against the currents in play, from the edges themselves. */
function residual(
  tail: Int32Array,
  head: Int32Array,
  g: Float64Array,
  held: Uint8Array,
  b: Float64Array,
  x: Float64Array,
): number {
  const r = b.slice()
  const scale = new Float64Array(b.length).fill(1)
  tail.forEach((u, e) => {
    const i = g[e]! * (x[u]! - x[head[e]!]!)
    r[u]! -= i
    r[head[e]!]! += i
    scale[u]! += g[e]! * (Math.abs(x[u]!) + Math.abs(x[head[e]!]!))
    scale[head[e]!]! += g[e]! * (Math.abs(x[u]!) + Math.abs(x[head[e]!]!))
  })
  return r.reduce((worst, v, i) => (held[i] ? worst : Math.max(worst, Math.abs(v) / scale[i]!)), 0)
}

describe('sparse factor of a network matrix', () => {
  it('agrees with dense elimination on 200 random multigraphs', () => {
    for (let seed = 1; seed <= 200; seed++) {
      const draw = new Random(seed)
      const random = (): number => draw.unit()
      const n = 2 + Math.floor(random() * 24)
      const pairs: [number, number][] = []
      for (let v = 1; v < n; v++) pairs.push([v, Math.floor(random() * v)])
      for (let i = Math.floor(random() * 2 * n); i > 0; i--)
        pairs.push([Math.floor(random() * n), Math.floor(random() * n)])
      const tail = Int32Array.from(pairs, (p) => p[0])
      const head = Int32Array.from(pairs, (p) => p[1])
      const g = Float64Array.from(pairs, () => 10 ** (random() * 3 - 1))
      const d = Float64Array.from({ length: n }, () => (random() < 0.2 ? random() : 0))
      const held = new Uint8Array(n)
      held[Math.floor(random() * n)] = 1
      if (random() < 0.3) held[Math.floor(random() * n)] = 1
      const b = Float64Array.from({ length: n }, () => random() - 0.5)

      const full = Array.from({ length: n }, () => new Array<number>(n).fill(0))
      pairs.forEach(([u, v], e) => {
        full[u]![u]! += g[e]!
        full[v]![v]! += g[e]!
        full[u]![v]! -= g[e]!
        full[v]![u]! -= g[e]!
      })
      const free = [...held.keys()].filter((v) => !held[v])
      for (const v of free) full[v]![v]! += d[v]!
      const expected = dense(
        free.map((u) => free.map((v) => full[u]![v]!)),
        free.map((v) => b[v]!),
      )
      const factor = factorise(analyse(n, tail, head, held), g, d)
      expect(factor.singularAt).toBe(-1)
      const x = solve(factor, b)
      free.forEach((v, i) => {
        expect(x[v]).toBeCloseTo(expected[i]!, 8)
      })
      for (let v = 0; v < n; v++) if (held[v]) expect(x[v]).toBe(0)
    }
  })

  it('takes a chain of 100,000 without recursion and without fill', () => {
    const n = 100_000
    const tail = Int32Array.from({ length: n - 1 }, (_, i) => i)
    const head = tail.map((v) => v + 1)
    const held = new Uint8Array(n)
    held[0] = 1
    const pattern = analyse(n, tail, head, held)
    expect(pattern.row.length).toBe(n - 2)
    const b = new Float64Array(n)
    b[n - 1] = 2
    const x = solve(factorise(pattern, new Float64Array(n - 1).fill(4)), b)
    // Ohm's law along the chain: 2 A through n − 1 resistances of 0.25 Ω.
    expect(x[n - 1]! / ((n - 1) * 0.5)).toBeCloseTo(1, 9)
  })

  it('orders stars, ladders and grids with little fill', () => {
    const star = 20_000
    const hub = analyse(
      star,
      Int32Array.from({ length: star - 1 }, () => 0),
      Int32Array.from({ length: star - 1 }, (_, i) => i + 1),
      new Uint8Array(star),
    )
    expect(hub.row.length).toBe(star - 1)
    const side = 40
    const steps: [number, number][] = []
    for (let v = 0; v < side * side; v++) {
      if (v % side < side - 1) steps.push([v, v + 1])
      if (v < side * side - side) steps.push([v, v + side])
    }
    const held = new Uint8Array(side * side)
    held[0] = 1
    const grid = analyse(
      side * side,
      Int32Array.from(steps, (s) => s[0]),
      Int32Array.from(steps, (s) => s[1]),
      held,
    )
    // The natural order fills about side³ = 64,000 entries.
    expect(grid.row.length).toBeLessThan(25_000)
  })

  it('keeps its accuracy over twelve decades of conductance', () => {
    const draw = new Random(7)
    const random = (): number => draw.unit()
    const n = 3000
    const pairs: [number, number][] = []
    for (let v = 1; v < n; v++) pairs.push([v, Math.max(0, v - 1 - Math.floor(random() * 5))])
    for (let i = 0; i < 600; i++) pairs.push([Math.floor(random() * n), Math.floor(random() * n)])
    const tail = Int32Array.from(pairs, (p) => p[0])
    const head = Int32Array.from(pairs, (p) => p[1])
    const g = Float64Array.from(pairs, () => 10 ** (random() * 12 - 6))
    const held = new Uint8Array(n)
    held[5] = 1
    const b = Float64Array.from({ length: n }, () => random() - 0.5)
    const x = solve(factorise(analyse(n, tail, head, held), g), b)
    expect(residual(tail, head, g, held, b, x)).toBeLessThan(1e-14)
  })

  it('names a vertex of a part that nothing holds', () => {
    const tail = Int32Array.from([0, 2])
    const head = Int32Array.from([1, 3])
    const held = Uint8Array.from([1, 0, 0, 0])
    const factor = factorise(analyse(4, tail, head, held), Float64Array.from([1, 1]))
    expect([2, 3]).toContain(factor.singularAt)
  })
})

describe('diagonal of the inverse', () => {
  it('is what solving for each vertex gives, on 100 random multigraphs', () => {
    for (let seed = 1; seed <= 100; seed++) {
      const draw = new Random(seed)
      const random = (): number => draw.unit()
      const n = 2 + Math.floor(random() * 40)
      const pairs: [number, number][] = []
      for (let v = 1; v < n; v++) pairs.push([v, Math.floor(random() * v)])
      for (let i = Math.floor(random() * n); i > 0; i--)
        pairs.push([Math.floor(random() * n), Math.floor(random() * n)])
      const held = new Uint8Array(n)
      held[Math.floor(random() * n)] = 1
      const pattern = analyse(
        n,
        Int32Array.from(pairs, (p) => p[0]),
        Int32Array.from(pairs, (p) => p[1]),
        held,
      )
      const factor = factorise(
        pattern,
        Float64Array.from(pairs, () => 10 ** (random() * 6 - 2)),
      )
      const diagonal = inverseDiagonal(factor)
      for (let v = 0; v < n; v++) {
        const unit = new Float64Array(n)
        unit[v] = 1
        const expected = solve(factor, unit)[v]!
        expect(Math.abs(diagonal[v]! - expected)).toBeLessThanOrEqual(1e-12 * expected)
      }
    }
  })
})
