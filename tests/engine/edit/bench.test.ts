import { describe, expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import {
  builtEdit,
  deviceEdit,
  photoEdit,
  statedTorque,
  tickEdit,
  torqueEdit,
} from '../../../engine/edit/bench'
import { bringFrom } from '../../../engine/edit/benchbring'
import { asBuilt, builtFacts, builtNote, differencesOf, unsettledOf } from '../../../engine/edit/benchfacts'
import { keptAside } from '../../../engine/edit/benchrecord'
import { benchSteps, stepsFor } from '../../../engine/edit/benchsteps'
import { takeOverEdit } from '../../../engine/edit/benchtake'
import type { Edit } from '../../../engine/edit/edit'
import type { Stamp } from '../../../engine/model/bench'
import type { TestEntry, TestSigning } from '../../../engine/model/commissioning'
import type { Design } from '../../../engine/model/design'
import { conductorNumbered, design, partNamed } from '../../build'

const AT = '2026-03-04T09:30:00.000Z'
const on = (by: string, minute = 30): Stamp => ({ at: `2026-03-04T09:${minute}:00.000Z`, by })

const drawing = () =>
  design()
    .part('battery', 'G1', { fitting: 'M8' })
    .part('fuse-bolt-in', 'F1', { ratingA: 60, fitting: 'M8' })
    .part('lamp', 'E1', { currentA: 3, fitting: 'tail' })
    .part('lamp', 'E2', { currentA: 3, fitting: 'unknown' })
    .join('G1.+', 'F1.1', { size: '16mm2', lengthM: 0.3, colour: 'RD' })
    .join('F1.2', 'E1.+', { size: '4mm2', lengthM: 3 })
    .join('E1.-', 'E2.-', { size: '4mm2', lengthM: 2 })
    .build()

/** Throws the refusal where there is one. */
function made(d: Design, ...edits: readonly Edit[]): Design {
  return edits.reduce((now, edit) => {
    const result = apply(now, edit)
    if (result.refused) throw new Error(result.why)
    return result.design
  }, d)
}

const stateOf = (d: Design, number: string): string =>
  benchSteps(d, conductorNumbered(d, number))
    .map((s) => `${s.step} ${s.state}`)
    .join(', ')

describe('steps', () => {
  test('only those that apply: no torque without a nut or a screw, nothing to crimp on a data lead', () => {
    const d = drawing()
    expect(stepsFor(d, conductorNumbered(d, 'W1'))).toEqual([
      'cut',
      'crimped',
      'labelled',
      'terminated',
      'torqued',
    ])
    // From the bolt of a fuse to a wire tail: the bolt is tightened.
    expect(stepsFor(d, conductorNumbered(d, 'W2'))).toContain('torqued')
    // One end is not stated: it may have to be tightened.
    expect(stepsFor(d, conductorNumbered(d, 'W3'))).toContain('torqued')
    const tails = design()
      .part('lamp', 'E1', { currentA: 3, fitting: 'tail' })
      .part('lamp', 'E2', { currentA: 3, fitting: 'blade 6.3' })
      .join('E1.-', 'E2.-', { size: '4mm2' })
      .build()
    expect(stepsFor(tails, conductorNumbered(tails, 'W1'))).toEqual([
      'cut',
      'crimped',
      'labelled',
      'terminated',
    ])
    const data = design()
      .part('monitor-hub', 'A1')
      .part('shunt', 'B1', { data: 'wired' })
      .join('A1.data1', 'B1.data', {})
      .build()
    expect(stepsFor(data, conductorNumbered(data, 'W1'))).toEqual(['labelled', 'terminated'])
  })

  test('are ticked and taken back, each an edit that leaves the rest of the design alone', () => {
    const d = drawing()
    const w1 = conductorNumbered(d, 'W1')
    const ticked = made(d, tickEdit(d, w1, 'cut', true, on('tablet')))
    expect(stateOf(ticked, 'W1')).toMatch(/^cut done, crimped open/)
    expect(ticked.conductors).toBe(d.conductors)
    expect(ticked.bench?.conductors[0]?.ticks[0]).toEqual({
      step: 'cut',
      done: true,
      on: { size: '16mm2', lengthM: 0.3, colour: 'RD' },
      number: 'W1',
      at: AT,
      by: 'tablet',
    })
    const back = made(ticked, tickEdit(ticked, w1, 'cut', false, on('tablet', 31)))
    expect(stateOf(back, 'W1')).toMatch(/^cut open/)
  })

  test('the same record once more is the same design', () => {
    const d = drawing()
    const edit = tickEdit(d, conductorNumbered(d, 'W1'), 'cut', true, on('tablet'))
    const once = made(d, edit)
    expect(made(once, edit)).toBe(once)
    expect(made(d, { do: 'bench', bring: { conductors: [] } })).toBe(d)
  })

  test('a clock that is behind does not lose what is done after', () => {
    const d = drawing()
    const w1 = conductorNumbered(d, 'W1')
    const ahead = made(d, tickEdit(d, w1, 'cut', true, on('tablet', 59)))
    const back = made(ahead, tickEdit(ahead, w1, 'cut', false, on('phone', 10)))
    expect(stateOf(back, 'W1')).toMatch(/^cut open/)
  })

  test('done before the drawing changed: to be looked at again, for what decides the step alone', () => {
    const d = drawing()
    const w1 = conductorNumbered(d, 'W1')
    const all = made(
      d,
      ...(['cut', 'crimped', 'labelled', 'terminated', 'torqued'] as const).map((step) =>
        tickEdit(d, w1, step, true, on('tablet')),
      ),
    )
    expect(stateOf(all, 'W1')).toBe('cut done, crimped done, labelled done, terminated done, torqued done')
    const thicker = made(all, { do: 'conductor', conductors: ['c1'], set: { size: '25mm2' } })
    expect(stateOf(thicker, 'W1')).toBe(
      'cut again, crimped again, labelled done, terminated done, torqued done',
    )
    expect(benchSteps(thicker, conductorNumbered(thicker, 'W1'))[0]?.since).toEqual([
      { key: 'size', was: '16mm2', now: '25mm2' },
    ])
    const renamed = made(all, { do: 'conductor', conductors: ['c1'], set: { number: 'W10' } })
    expect(stateOf(renamed, 'W10')).toBe(
      'cut done, crimped done, labelled again, terminated done, torqued done',
    )
    const smallStud = made(all, { do: 'value', part: 'p1', field: 'fitting', value: 'M6' })
    expect(stateOf(smallStud, 'W1')).toMatch(/^cut done, crimped again, labelled done/)
  })
})

describe('built otherwise', () => {
  test('the latest word counts, and the design as built has it; the drawing stays', () => {
    const d = drawing()
    const w2 = conductorNumbered(d, 'W2')
    const built = made(
      d,
      builtEdit(d, w2, { what: 'size', value: '2.5mm2' }, on('tablet')),
      builtEdit(d, w2, { what: 'lengthM', value: 3.4 }, on('tablet')),
      builtEdit(d, w2, { what: 'note', value: 'round the wheel arch' }, on('tablet')),
    )
    expect(built.conductors).toBe(d.conductors)
    expect(differencesOf(built).map(({ what, drawn, built: b }) => [what, drawn, b])).toEqual([
      ['size', '4mm2', '2.5mm2'],
      ['lengthM', 3, 3.4],
    ])
    expect(builtNote(built, 'c2')).toBe('round the wheel arch')
    expect(conductorNumbered(asBuilt(built), 'W2')).toEqual({ ...w2, size: '2.5mm2', lengthM: 3.4 })
    expect(asBuilt(built)).not.toHaveProperty('bench')
  })

  test('nothing otherwise: the design as built is the design', () => {
    const d = drawing()
    const w2 = conductorNumbered(d, 'W2')
    expect(asBuilt(d)).toBe(d)
    const same = made(d, builtEdit(d, w2, { what: 'size', value: '4mm2' }, on('tablet')))
    expect(differencesOf(same)).toEqual([])
    const otherwise = made(d, builtEdit(d, w2, { what: 'size', value: '6mm2' }, on('tablet')))
    const withdrawn = made(
      otherwise,
      builtEdit(otherwise, w2, { what: 'size', value: null }, on('tablet', 31)),
    )
    expect(asBuilt(withdrawn)).toBe(withdrawn)
  })

  test('a step done before it was recorded as built otherwise still counts', () => {
    const d = drawing()
    const w2 = conductorNumbered(d, 'W2')
    const cut = made(d, tickEdit(d, w2, 'cut', true, on('tablet')))
    const built = made(cut, builtEdit(cut, w2, { what: 'size', value: '2.5mm2' }, on('tablet', 31)))
    expect(stateOf(built, 'W2')).toMatch(/^cut done/)
  })

  test('at another terminal: taken over it is drawn there, and nothing differs any more', () => {
    const d = drawing()
    const w2 = conductorNumbered(d, 'W2')
    const to = { part: partNamed(d, 'E2').id, terminal: '+' }
    const built = made(d, builtEdit(d, w2, { what: 'to', value: to }, on('tablet')))
    expect(conductorNumbered(asBuilt(built), 'W2').to).toEqual(to)
    const taken = made(built, takeOverEdit(differencesOf(built)[0]!))
    expect(conductorNumbered(taken, 'W2').to).toEqual(to)
    expect(differencesOf(taken)).toEqual([])
    expect(taken.bench).toBe(built.bench)
  })

  test('a size taken over is locked: it lies in the vehicle', () => {
    const d = drawing()
    const built = made(
      d,
      builtEdit(d, conductorNumbered(d, 'W2'), { what: 'size', value: '6mm2' }, on('tablet')),
    )
    expect(conductorNumbered(made(built, takeOverEdit(differencesOf(built)[0]!)), 'W2')).toMatchObject({
      size: '6mm2',
      locked: true,
    })
  })

  test('a terminal that has left the drawing is told and not reckoned with', () => {
    const d = drawing()
    const gone = { part: 'p99', terminal: '+' }
    const built = made(d, builtEdit(d, conductorNumbered(d, 'W2'), { what: 'to', value: gone }, on('tablet')))
    expect(differencesOf(built)).toMatchObject([{ what: 'to', stands: false }])
    expect(asBuilt(built)).toBe(built)
  })

  test.each([
    [{ what: 'lengthM', value: 0 }, 'length'],
    [{ what: 'lengthM', value: 1001 }, 'length'],
    [{ what: 'lengthM', value: Number.NaN }, 'length'],
    [{ what: 'note', value: 'x'.repeat(501) }, 'long-note'],
  ] as const)('%j is refused', (fact, code) => {
    const d = drawing()
    const result = apply(d, builtEdit(d, conductorNumbered(d, 'W2'), fact, on('tablet')))
    expect(result).toMatchObject({ refused: true, code })
  })

  test('photos, torques and names of devices', () => {
    const d = drawing()
    const w1 = conductorNumbered(d, 'W1')
    const photo = made(d, photoEdit(d, w1, 'f1', '/9j/AAAA', on('tablet')))
    expect(photo.bench?.conductors[0]?.photos).toHaveLength(1)
    const large = photoEdit(d, w1, 'f2', `/9j/${'A'.repeat(80_000)}`, on('tablet'))
    expect(apply(d, large)).toMatchObject({ refused: true, code: 'large-photo' })
    const torque = made(d, torqueEdit(d, w1.to, 8, on('tablet')))
    expect([statedTorque(torque, w1.to), statedTorque(torque, w1.from)]).toEqual([8, null])
    expect(apply(d, torqueEdit(d, w1.to, 0, on('tablet')))).toMatchObject({ refused: true, code: 'torque' })
    expect(made(d, deviceEdit(d, ' Bench tablet ', on('tablet'))).bench?.devices).toEqual([
      { device: 'tablet', name: 'Bench tablet', at: AT },
    ])
    expect(apply(d, deviceEdit(d, ' ', on('tablet')))).toMatchObject({ refused: true })
  })
})

describe('two devices', () => {
  const d = drawing()
  const [w1, w2] = [conductorNumbered(d, 'W1'), conductorNumbered(d, 'W2')]
  const tablet = made(
    d,
    tickEdit(d, w1, 'cut', true, on('tablet')),
    tickEdit(d, w1, 'crimped', true, on('tablet')),
    builtEdit(d, w2, { what: 'size', value: '6mm2' }, on('tablet', 31)),
  )
  const phone = made(
    d,
    tickEdit(d, w1, 'cut', true, on('phone', 32)),
    tickEdit(d, w2, 'labelled', true, on('phone')),
    builtEdit(d, w2, { what: 'size', value: '2.5mm2' }, on('phone', 33)),
    builtEdit(d, w2, { what: 'lengthM', value: 3.2 }, on('phone', 33)),
  )
  const brought = (mine: Design, theirs: Design) => {
    const answer = bringFrom(mine, theirs)
    if ('refused' in answer) throw new Error(answer.why)
    return answer
  }

  test('what the other file brings is counted, and where both said otherwise both are told', () => {
    const answer = brought(tablet, phone)
    expect(answer).toMatchObject({ done: 1, again: 1, takenBack: 0, facts: 2, photos: 0, nothing: false })
    expect(answer.aside).toEqual([])
    expect(answer.drawingDiffers).toBe(false)
    expect(
      answer.conflicts.map(({ number, what, kept, others }) => [
        number,
        what,
        kept.value,
        others.map((o) => o.value),
      ]),
    ).toEqual([['W2', 'size', '2.5mm2', ['6mm2']]])
    const merged = made(tablet, answer.edit)
    expect(brought(merged, phone).nothing).toBe(true)
    expect(merged.bench).toEqual(made(phone, brought(phone, tablet).edit).bench)
  })

  test('the other word stays listed until somebody who knows both has the last one', () => {
    const merged = made(tablet, brought(tablet, phone).edit)
    expect(differencesOf(merged)[0]?.others.map((o) => o.value)).toEqual(['6mm2'])
    const settled = made(merged, builtEdit(merged, w2, { what: 'size', value: '2.5mm2' }, on('tablet', 40)))
    expect(differencesOf(settled)[0]).toMatchObject({ built: '2.5mm2', others: [] })
    expect(unsettledOf(merged).map((u) => u.fact.value)).toEqual(['2.5mm2'])
    expect(unsettledOf(settled)).toEqual([])
    expect(builtFacts(settled, w2.id)[0]?.fact.by).toBe('tablet')
    // The phone, which has not seen it, opens the file and sees the same.
    expect(differencesOf(made(phone, brought(phone, settled).edit))[0]).toMatchObject({ others: [] })
  })

  test('a file of another design is refused', () => {
    expect(bringFrom(tablet, { ...phone, id: 'another' })).toMatchObject({
      refused: true,
      code: 'other-design',
    })
  })

  test('records of conductors that the drawing here has lost are kept aside, and come back with them', () => {
    const shorter = made(d, { do: 'remove', parts: [], conductors: [w2.id] })
    const answer = brought(shorter, phone)
    expect(answer.aside).toEqual(['W2'])
    expect(answer.drawingDiffers).toBe(true)
    const merged = made(shorter, answer.edit)
    expect(keptAside(merged).map((a) => a.number)).toEqual(['W2'])
    expect(differencesOf(merged)).toEqual([])
    expect(brought(phone, merged).nothing).toBe(true)
    const again = { ...merged, conductors: d.conductors }
    expect(differencesOf(again)).toHaveLength(2)
  })

  test('readings of commissioning come along, those that signatures stand on first, each once', () => {
    const reading = (id: string): TestEntry => ({
      ...{ is: 'entry', id, step: 'visual', reading: 'sound', of: 'E1', found: true, unit: '' },
      ...{ expected: { seen: 'sound' }, remark: '', by: 'R. Hale', at: AT },
    })
    const signing: TestSigning = {
      ...{ is: 'signing', id: 's1', name: 'R. Hale', remark: '', at: AT, covers: ['r1', 'r2'] },
      ...{ passed: 2, failed: 0, outOfDate: 0, notDone: 0 },
    }
    const here = { ...tablet, commissioning: [reading('r1')] }
    const there = { ...phone, commissioning: [signing, reading('r1'), reading('r2')] }
    const answer = brought(here, there)
    expect(answer.readings).toBe(2)
    const merged = made(here, answer.edit)
    expect(merged.commissioning?.map((r) => r.id)).toEqual(['r1', 'r2', 's1'])
    expect(brought(merged, there)).toMatchObject({ readings: 0, nothing: true })
  })

  test('an id given to different conductors on two devices mixes nothing', () => {
    const other: Design = {
      ...d,
      conductors: d.conductors.map((c) =>
        c.id === w2.id ? { ...c, number: 'W9', from: w1.from, to: { part: 'p4', terminal: '+' } } : c,
      ),
    }
    const answer = brought(other, phone)
    expect(answer.aside).toEqual(['W2'])
    const merged = made(other, answer.edit)
    expect(stateOf(merged, 'W9')).not.toContain('done')
    expect(differencesOf(merged)).toEqual([])
    // Back on the phone, the record finds its conductor again.
    expect(brought(phone, merged)).toMatchObject({ aside: [], conflicts: [] })
  })
})
