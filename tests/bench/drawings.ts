/**
 * How good the drawings of the demos are, on the screen in each view and on paper, and how long they take:
 * `npm run bench -- drawings`. Tests hold what must be none; the other figures are for comparing.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { designIn } from '../../engine/edit/designin'
import { readDesign } from '../../engine/kinds/readdesign'
import type { Design } from '../../engine/model/design'
import { analyse } from '../../engine/rules/analyse'
import { sceneOf } from '../../engine/sheets/makescene'
import { type DrawnQuality, drawnQuality, onPaperOf } from './drawnquality'

const DEMOS = new URL('../../public/demos/', import.meta.url)
const VIEWS = ['single-line', 'both-poles', 'data'] as const

export function drawingsBench(): string[] {
  return demos().flatMap(([name, design]) => {
    const { answers } = analyse(design)
    const onScreen = VIEWS.map((view) => {
      const start = performance.now()
      const scene = sceneOf(design, answers, view)
      const ms = performance.now() - start
      return `${name}, ${view}: ${said(drawnQuality(designIn(design, view), scene))}; fresh in ${ms.toFixed(0)} ms`
    })
    const onPaper = (['single-line', 'both-poles'] as const).flatMap((view) =>
      onPaperOf(design, answers, view).map(
        (quality, i) => `${name}, ${view} on A3, drawing ${i + 1}: ${said(quality)}`,
      ),
    )
    return [...onScreen, ...onPaper]
  })
}

function demos(): (readonly [string, Design])[] {
  const files = readdirSync(DEMOS).filter((f) => f.endsWith('.json') && f !== 'index.json')
  return files.sort().flatMap((file) => {
    const { design } = readDesign(readFileSync(new URL(file, DEMOS), 'utf8'))
    return design ? [[file.replace('.json', ''), design] as const] : []
  })
}

function said(q: DrawnQuality): string {
  const faults = [
    `${q.overlaps} overlaps`,
    `${q.tooNear} too near`,
    `${q.passes} passes`,
    `${q.touches} touches`,
    `${q.labelCollisions} label collisions`,
    `${q.textsInLanes} texts in lanes`,
    `${q.unrouted} unrouted`,
  ].filter((f) => !f.startsWith('0 '))
  const length = `${(q.lengthMm / 1000).toFixed(1)} m`
  return `${faults.join(', ') || 'no faults'}; ${q.crossings} crossings, ${q.bends} bends, ${length}`
}
