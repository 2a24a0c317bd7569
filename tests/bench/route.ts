/**
 * Routing of whole sheets and of one step of a drag, in one run: `tsx tests/bench/route.ts`. Against a plain search
 * for each conductor alone, round the parts only; and how the time grows with the sheet.
 */
import { pathToFileURL } from 'node:url'
import { placeLabels } from '../../engine/sheets/labels/place'
import type { RouteResult } from '../../engine/sheets/route/request'
import { routeAll } from '../../engine/sheets/route/route'
import { cheapestWay } from '../reference/cheapestway'
import { layoutQuality } from './layoutquality'
import { medianMs } from './median'
import { type RandomSheet, randomSheet } from './randomsheet'

/** Parts, conductors, share of conductors that join near parts. */
const SIZES = [
  [40, 80, 0.85],
  [150, 300, 0.85],
  [1000, 2000, 1],
] as const
const RUNS = 9
const STEPS = 30

export function routeBench(): string[] {
  return SIZES.flatMap(([parts, conductors, near]) => {
    const sheet = randomSheet(1, parts, conductors, near)
    const result = routeAll(sheet.boxes, sheet.requests)
    const all = medianMs(parts > 500 ? 1 : RUNS, () => routeAll(sheet.boxes, sheet.requests))
    const step = dragMs(sheet, result)
    const lines = [
      `routing ${parts} parts, ${conductors} conductors: ${all.toFixed(0)} ms from nothing; one step of a drag ` +
        `${step.toFixed(1)} ms, ${(step / all).toFixed(3)} of it`,
    ]
    if (parts > 500) return lines
    const few = sheet.requests.slice(0, 20)
    const plain = medianMs(1, () => {
      for (const { from, to } of few) cheapestWay(sheet.boxes, from, to)
    })
    const ratio = all / ((plain * conductors) / few.length)
    return [
      ...lines,
      `  ${ratio.toFixed(3)} of plain searches for each conductor alone`,
      `  ${qualityOf(sheet, result)}`,
    ]
  })
}

/** Each step moves another part by one grid step, with the routes from before the drag. */
function dragMs({ boxes, requests }: RandomSheet, { routes }: RouteResult): number {
  let k = 0
  return medianMs(STEPS, () => {
    const part = boxes[(37 * k) % boxes.length]!
    const [dx, dy] = [2.5 * ((k % 3) - 1), 2.5 * ((k % 2) * 2 - 1)]
    k++
    const shift = <P extends { x: number; y: number }>(p: P): P => {
      const isOn = p.x >= part.x && p.x <= part.x + part.w && p.y >= part.y && p.y <= part.y + part.h
      return isOn ? { ...p, x: p.x + dx, y: p.y + dy } : p
    }
    routeAll(
      boxes.map((b) => (b === part ? { ...b, x: b.x + dx, y: b.y + dy } : b)),
      requests.map((r) => ({ ...r, from: shift(r.from), to: shift(r.to) })),
      routes,
    )
  })
}

/** Measured from the drawing alone, with a label on every conductor and part. */
function qualityOf({ boxes, requests }: RandomSheet, { routes }: RouteResult): string {
  const ways = requests.map((r, i) => ({ ...r, points: routes[i]!.points }))
  const stretches = ways.map(({ points }) =>
    points.slice(1).map((b, k) => ({ x1: points[k]!.x, y1: points[k]!.y, x2: b.x, y2: b.y })),
  )
  const around = boxes.map((b) => [{ x1: b.x, y1: b.y, x2: b.x + b.w, y2: b.y }])
  const requested = [...around, ...stretches].map((near, i) => ({
    id: `${i}`,
    w: 12,
    h: 2,
    near,
    priority: 1,
  }))
  const place = () => placeLabels(requested, { boxes, segments: stretches.flat() })
  const labels = place()
  const leaders = labels.filter((l) => l.leader).length
  const ms = medianMs(RUNS, place)
  const figures = Object.entries(layoutQuality(boxes, ways, labels)).map(([k, v]) => `${k} ${Math.round(v)}`)
  return `${figures.join(', ')}; ${labels.length} labels in ${ms.toFixed(0)} ms, ${leaders} with a leader`
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  for (const line of routeBench()) console.log(line)
