import { describe, expect, test } from 'vitest'
import { fuseBandPlot } from '../../../engine/calc/bandplot'
import { analyse } from '../../../engine/rules/analyse'
import { BAND_PLOT_MM, bandPlotMarks } from '../../../engine/sheets/bandplot'
import { logFrame } from '../../../engine/sheets/logaxes'
import { widthOf } from '../../../engine/sheets/measure'
import { conductorNumbered } from '../../build'
import { vetVan } from '../../scenarios/demos/vetvan'
import { bench } from '../rules/bench'

const plotOf = (change: Parameters<typeof bench>[0], number: string) => {
  const design = bench(change).build()
  const plot = fuseBandPlot(design, analyse(design).answers, conductorNumbered(design, number).id)
  return { design, plot }
}

describe('what belongs on the plot', () => {
  test('the band of the guard, the copper behind it, the start and the two fault currents', () => {
    const { plot } = plotOf({ parts: { M1: { currentA: 8, inrush: 3, inrushS: 0.2 } } }, 'W5')
    expect(plot).toMatchObject({ part: 'p3', key: '2', ratingA: 15, end: 'to' })
    expect(plot?.start).toMatchObject({ part: 'p5', amps: 24, seconds: 0.2 })
    // Limits of ISO 8820-3, from memory: at 2 × it holds 0.15 s and clears within 5 s.
    expect(plot?.holds).toContainEqual({ amps: 30, seconds: 0.15 })
    expect(plot?.clears).toContainEqual({ amps: 30, seconds: 5 })
    // (115 · 2.5)² = 82 656 A²s (IEC 60364-4-43): 128.6 A for 5 s; k by the formula is 114.8.
    expect(plot?.bears?.[0].amps).toBeCloseTo((114.8 * 2.5) / Math.sqrt(5), 0)
    expect(plot!.leastA!).toBeLessThan(plot!.greatestA!)
  })

  test('edges never rise, and the lower one stays below the upper one', () => {
    const { plot } = plotOf({}, 'W3')
    for (const edge of [plot!.holds, plot!.clears])
      for (let i = 1; i < edge.length; i++) {
        expect(edge[i]!.amps).toBeGreaterThanOrEqual(edge[i - 1]!.amps)
        expect(edge[i]!.seconds).toBeLessThanOrEqual(edge[i - 1]!.seconds)
      }
  })

  test('nothing where no device guards, or its times are not known', () => {
    expect(plotOf({}, 'W1').plot).toBeNull()
    expect(plotOf({}, 'W4').plot).toBeNull()
    expect(plotOf({ parts: { F2: { class: 'other' } } }, 'W3').plot).toBeNull()
  })
})

describe('logarithmic axes', () => {
  const frame = logFrame({
    box: { x: 10, y: 5, w: 30, h: 20 },
    across: { least: 20, most: 900, unit: 'A' },
    up: { least: 0.1, most: 10, unit: 's' },
  })

  test('run over whole decades', () => {
    expect([frame.x(10), frame.x(100), frame.x(1000)]).toEqual([10, 25, 40])
    expect([frame.y(0.1), frame.y(1), frame.y(10)]).toEqual([25, 15, 5])
  })

  test('cut strokes at the frame', () => {
    const [piece, ...more] = frame.stroke([
      [1, 1],
      [100, 1],
      [100, 1e9],
    ])
    expect(more).toEqual([])
    expect(piece).toEqual([
      [10, 15],
      [25, 15],
      [25, 5],
    ])
    expect(
      frame.stroke([
        [1, 100],
        [1000, 100],
      ]),
    ).toEqual([])
  })
})

test('marks of every plot of the main demo lie in their box and are lettered 1.8 mm high at least', () => {
  const design = vetVan()
  const { answers } = analyse(design)
  const { w, h } = BAND_PLOT_MM
  let plots = 0
  for (const c of design.conductors) {
    const plot = fuseBandPlot(design, answers, c.id)
    if (!plot) continue
    plots++
    const outside: string[] = []
    const look = (x: number, y: number, what: string): void => {
      if (x < -0.01 || y < -0.01 || x > w + 0.01 || y > h + 0.01)
        outside.push(`${c.number} ${what} ${x} ${y}`)
    }
    for (const m of bandPlotMarks(design, plot)) {
      if (m.is === 'line') for (const [x, y] of m.points) look(x, y, 'line')
      if (m.is !== 'text') continue
      expect(m.height).toBeGreaterThanOrEqual(1.8)
      const wide = widthOf(m.text, m.height, m.weight)
      const left = m.anchor === 'end' ? m.at[0] - wide : m.anchor === 'middle' ? m.at[0] - wide / 2 : m.at[0]
      look(left, m.at[1] - m.height, m.text)
      look(left + wide, m.at[1], m.text)
    }
    expect(outside).toEqual([])
  }
  expect(plots).toBeGreaterThan(40)
})
