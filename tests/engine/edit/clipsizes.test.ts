import { describe, expect, it } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import { copyOf, duplicateEdit, pasteEdit } from '../../../engine/edit/clip'
import { analyse, type Design, sentence } from '../../../engine/index'
import type { OwnConductor } from '../../../engine/tables/ownsizes'
import { design } from '../../build'

const row = (key: string, name: string, sectionMm2: number): OwnConductor => ({
  key,
  name,
  sectionMm2,
  ohmsPerKm: null,
  amps: null,
  insulationC: null,
  offered: false,
})

/** A battery and a lamp on a conductor of the designer's own. */
const source = (ownConductors: readonly OwnConductor[] = [row('own:1', 'Welding lead', 35)]): Design => ({
  ...design()
    .part('battery', 'G1', { capacityAh: 100, dischargeA: 100, chargeA: 50, internalMOhm: 4 })
    .part('lamp', 'E1', { currentA: 1 })
    .join('G1.+', 'E1.+', { size: 'own:1', lengthM: 1 })
    .build(),
  ownConductors,
})

function pasted(into: Design, from: Design): Design {
  const clip = copyOf(from, { parts: from.parts.map((p) => p.id), conductors: [] })
  const result = apply(into, pasteEdit(into, clip, { x: 0, y: 0 }))
  if (result.refused) throw new Error(result.why)
  return result.design
}
const sizes = (d: Design): (string | null)[] => d.conductors.map((c) => c.size)

describe('own conductors on the way to another design', () => {
  it('come along under the key that they had, where it is free', () => {
    const d = pasted(design().build(), source())
    expect(d.ownConductors).toEqual([row('own:1', 'Welding lead', 35)])
    expect(sizes(d)).toEqual(['own:1'])
  })

  it('are added under another key where theirs is another conductor here', () => {
    const into = { ...design().build(), ownConductors: [row('own:1', 'Thin lead', 1)] }
    const d = pasted(into, source())
    expect(d.ownConductors).toEqual([row('own:1', 'Thin lead', 1), row('own:2', 'Welding lead', 35)])
    expect(sizes(d)).toEqual(['own:2'])
  })

  it('are the ones that are there already where all figures agree, and get a name of their own where they do not', () => {
    const same = { ...design().build(), ownConductors: [row('own:7', 'Welding lead', 35)] }
    expect(sizes(pasted(same, source()))).toEqual(['own:7'])
    expect(pasted(same, source()).ownConductors).toHaveLength(1)
    const other = { ...design().build(), ownConductors: [row('own:7', 'Welding lead', 25)] }
    expect(pasted(other, source()).ownConductors?.map((o) => o.name)).toEqual([
      'Welding lead',
      'Welding lead (2)',
    ])
  })

  it('a size whose row was taken away is not taken for another conductor', () => {
    const into = { ...design().build(), ownConductors: [row('own:1', 'Thin lead', 1)] }
    expect(sizes(pasted(into, source([])))).toEqual([null])
  })

  it('a copy within the design adds no row', () => {
    const d = source()
    const result = apply(d, duplicateEdit(d, { parts: d.parts.map((p) => p.id), conductors: [] }))
    if (result.refused) throw new Error(result.why)
    expect(result.design.ownConductors).toEqual(d.ownConductors)
    expect(sizes(result.design)).toEqual(['own:1', 'own:1'])
  })
})

describe('an own conductor whose row was taken away', () => {
  it('is one finding that says so; with its row it is none', () => {
    const d = source([])
    const told = analyse(d).findings.filter((f) => ['D1', 'D3'].includes(f.rule))
    expect(told.map((f) => f.rule)).toEqual(['D1'])
    expect(sentence(told[0]!, d).title).toBe('Size not known')
    expect(sentence(told[0]!, d).text).toContain('its row may have been taken away')
    expect(analyse(source()).findings.filter((f) => ['D1', 'D3'].includes(f.rule))).toEqual([])
  })
})
