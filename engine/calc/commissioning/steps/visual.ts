import { keyOf } from '../../../edit/nets'
import { kindOf } from '../../../kinds/all'
import type { Design, Part } from '../../../model/design'
import { valuesOf } from '../../fusefacts'
import { seen } from '../expect'
import { probe } from '../probes'
import type { Rig } from '../rig'
import type { Reading, StepCaution, TestStep } from '../step'

/** Looked at before anything is joined to a battery. */
export function visualSteps(rig: Rig): TestStep[] {
  const { design } = rig
  const locations = [...new Set(design.parts.map((p) => p.location))].sort()
  const steps = [
    ...locations.map((place) => placeStep(design, place)),
    ...design.parts.flatMap((p) => batteryStep(rig, p)),
    ...fusesFitted(rig),
    ...mainsStep(rig),
  ]
  if (design.conductors.length === 0) return steps
  const count = `${design.conductors.length} conductors`
  return [
    step('conductors', 'conductors', [], { reading: look(`${count}, ${markOf(design)}`) }),
    step('terminations', 'terminations', [], { reading: look(count) }),
    ...steps,
  ]
}

function placeStep({ parts }: Design, place: string): TestStep {
  const here = parts.filter((p) => p.location === place)
  const names = here.map((p) => p.designation).join(', ')
  return step(`place/${place}`, 'place', here, { place, reading: look(names.slice(0, MOST)) })
}

/** Longest text of what is to be seen, letters, as the file keeps it. */
const MOST = 2000

/** Short mark of numbers, sizes, colours and ends of all conductors: another one, and they have to be looked at anew. */
function markOf({ conductors }: Design): string {
  let hash = 0x811c9dc5
  for (const c of conductors)
    for (const word of [c.number, c.size ?? '', c.colour, keyOf(c.from), keyOf(c.to)])
      for (const sign of `${word};`) hash = Math.imul(hash ^ sign.codePointAt(0)!, 0x01000193) >>> 0
  return hash.toString(16).padStart(8, '0')
}

function step(
  key: string,
  tells: TestStep['tells'],
  parts: readonly Part[],
  more: Partial<Pick<TestStep, 'place' | 'cautions'>> & { readonly reading?: Reading } = {},
): TestStep {
  const { reading, ...rest } = more
  return {
    key: `visual/${key}`,
    group: 'visual',
    tells,
    parts: parts.map((p) => p.id),
    conductors: [],
    cautions: [],
    setting: { isolated: true },
    readings: [reading ?? look()],
    ...rest,
  }
}

const look = (what = ''): Reading => ({
  key: 'so',
  asks: 'so',
  instrument: 'eyes',
  at: [],
  conductors: [],
  expected: seen(what),
})

/** Batteries that give off gas need air; all of them covers and a strap. */
function batteryStep({ design }: Rig, part: Part): TestStep[] {
  if (kindOf(part.kind)?.group !== 'stores') return []
  const chemistry = String(valuesOf(design, part.id)('chemistry') ?? '')
  const cautions: StepCaution[] = chemistry === 'flooded' ? ['battery-short', 'vented'] : ['battery-short']
  return [step(`battery/${part.id}`, 'battery-place', [part], { cautions, reading: look(chemistry) })]
}

/** Each fuse against the chart: one step a block, and one for those that stand alone. */
function fusesFitted({ design, plan }: Rig): TestStep[] {
  const byPart = new Map<string, string[]>()
  for (const { part, branch } of plan.border.branches.values()) {
    if (branch.kind !== 'fuse') continue
    const rating = branch.ratingA === null ? 'none chosen' : `${branch.ratingA} A`
    byPart.set(part, [...(byPart.get(part) ?? []), `${branch.key}: ${rating}`])
  }
  return design.parts.flatMap((part) => {
    const fuses = byPart.get(part.id)
    if (!fuses) return []
    const words = fuses.length === 1 ? fuses[0]!.replace(/^.*: /, '') : fuses.join(', ')
    const reading = { ...look(words), at: [probe(part.id)] }
    return [step(`fuses/${part.id}`, 'fuses-fitted', [part], { reading })]
  })
}

/** Mains is not tested here: somebody who may has to have signed for it. */
function mainsStep({ design }: Rig): TestStep[] {
  const parts = design.parts.filter((p) => kindOf(p.kind)?.group === 'mains')
  return parts.length === 0 ? [] : [step('mains', 'mains-papers', parts, { cautions: ['mains'] })]
}
