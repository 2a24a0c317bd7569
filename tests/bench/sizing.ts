/**
 * Sizing a whole design, in one run: `tsx tests/bench/sizing.ts`. The van and systems of about 150, 1,000 and 5,000
 * conductors, as multiples of the time that all answers about the same design take; and against HiGHS on the same choice of
 * sizes as an integer program, for systems small enough for it.
 */
import { pathToFileURL } from 'node:url'
import { answersOf } from '../../engine/calc/answersof'
import { sizeIt } from '../../engine/calc/sizing/sizeit'
import { apply } from '../../engine/edit/apply'
import type { Design } from '../../engine/model/design'
import { loadSystem, type Shape, systemDesign } from '../reference/loadsystem'
import { sizedByProgram } from '../reference/sizingprogram'
import { vetVan } from '../scenarios/demos/vetvan'
import { medianMs } from './median'

/** Conductors, about: two a load, and what they share. */
const SIZES = [150, 1000, 5000]

export function sizingBench(): string[] {
  return [line('van', vetVan(), 15), ...growth(), againstHighs()]
}

function growth(): string[] {
  return SIZES.map((size) => {
    const loads = Math.round(size / 2 - size / 30)
    const design = systemDesign(loadSystem(1, { ...shape(loads), totalA: 150 }))
    return line('system', design, size > 1000 ? 3 : 9)
  })
}

const shape = (loads: number): Omit<Shape, 'totalA'> => {
  const blocks = Math.ceil(loads / 29)
  return { loads, blocks, backs: blocks, nested: true, reachM: 8 }
}

function line(what: string, design: Design, runs: number): string {
  const sized = sizedDesign(design)
  const ours = medianMs(runs, () => sizeIt(design, 'all'))
  const answers = medianMs(runs, () => answersOf(sized))
  const conductors = design.conductors.length
  return `sizing, ${what} of ${conductors} conductors: ${ours.toFixed(1)} ms, ${(ours / answers).toFixed(1)} × all its answers (${answers.toFixed(1)} ms)`
}

function sizedDesign(design: Design): Design {
  const sizing = sizeIt(design, 'all')
  if ('infeasible' in sizing) throw new Error(JSON.stringify(sizing.infeasible))
  const result = apply(design, sizing.edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}

function againstHighs(): string {
  const systems = Array.from({ length: 10 }, (_, i) =>
    loadSystem(i + 1, { loads: 10, blocks: 3, backs: 2, nested: i % 2 === 0, totalA: 50, reachM: 9 }),
  )
  const designs = systems.map(systemDesign)
  const ours = medianMs(5, () => designs.map((d) => sizeIt(d, 'all')))
  const theirs = medianMs(1, () => systems.map((s) => sizedByProgram(s)))
  return `sizing, 10 systems of ${designs[0]!.conductors.length} conductors: ${Math.round(theirs / ours)} × faster than HiGHS on the choice alone (${ours.toFixed(0)} ms with all calculation against ${theirs.toFixed(0)} ms)`
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(sizingBench().join('\n'))
