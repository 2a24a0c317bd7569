import { terminalsIn } from '../../../edit/terminal'
import { kindOf } from '../../../kinds/all'
import type { Part } from '../../../model/design'
import { conductorsAt } from '../../../model/lookup'
import { valuesOf } from '../../fusefacts'
import { notKnown, seen } from '../expect'
import { probe } from '../probes'
import type { Rig } from '../rig'
import type { Expected, StepCaution, StepTells, TestStep } from '../step'

/** Everything that the monitor should show shows there, under its own name. */
export const dataSteps = (rig: Rig): TestStep[] =>
  rig.design.parts.flatMap((p) => {
    const tells = tellsOf(rig, p)
    return tells === null ? [] : [step(rig, p, tells)]
  })

function tellsOf({ design }: Rig, part: Part): StepTells | null {
  const kind = kindOf(part.kind)
  if (!kind || kind.key === 'monitor-hub') return kind ? 'display' : null
  const linked = terminalsIn(part)?.some((t) => t.pole === 'data') === true
  if (kind.key === 'data-expander' || kind.key === 'display')
    return linked || wireless(design, part) ? 'display' : null
  if (!linked && !wireless(design, part)) return null
  return kind.group === 'data' ? 'sender' : kind.key === 'voltage-sense' ? 'sense' : 'data-link'
}

const wireless = (design: Rig['design'], part: Part): boolean =>
  valuesOf(design, part.id)('data') === 'wireless'

function step({ design }: Rig, part: Part, tells: StepTells): TestStep {
  const leads = (terminalsIn(part) ?? [])
    .filter((t) => t.pole === 'data')
    .flatMap((t) => conductorsAt(design, part.id, t.key).map((c) => c.id))
  return {
    key: `data/${part.id}`,
    group: 'data',
    tells,
    parts: [part.id],
    conductors: leads,
    cautions: cautionsOf(part),
    setting: {},
    readings: [
      {
        key: 'so',
        asks: 'so',
        instrument: 'display',
        at: [probe(part.id)],
        conductors: leads,
        expected: expectedOf(design, part, leads.length),
      },
    ],
  }
}

function expectedOf(design: Rig['design'], part: Part, leads: number): Expected {
  if (part.kind === 'monitor-hub' || wireless(design, part)) return seen()
  return leads > 0 ? seen() : notKnown('no-lead', [part.id])
}

const cautionsOf = (part: Part): StepCaution[] =>
  part.kind === 'gas-sender' || /\bgas\b|LPG/i.test(part.location) ? ['gas'] : []
