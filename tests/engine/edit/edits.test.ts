import { describe, expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import type { Edit } from '../../../engine/edit/edit'
import { boxOf } from '../../../engine/kinds/place'
import type { Design } from '../../../engine/model/design'
import { newConductor } from '../../../engine/model/newdesign'
import { conductorNumbered, design, partNamed } from '../../build'

const start = design({ systemV: 12 })
  .part('battery', 'G1', { dischargeA: 100 })
  .part('fuse-bolt-in', 'F1', { ratingA: 100 })
  .part('busbar', 'W90', { pole: 'positive' }, { name: 'main bar' })
  .part('load', 'E1')
  .join('G1.+', 'F1.1', { size: '35mm2', lengthM: 0.2, path: [{ x: 30, y: 10 }] })
  .join('F1.2', 'W90.1l', { size: '35mm2', lengthM: 0.5 })
  .join('W90.2r', 'E1.+')
  .join('E1.-', 'G1.-', { returnOf: 'W3' })
  .build()

const id = (designation: string): string => partNamed(start, designation).id
const wire = (number: string): string => conductorNumbered(start, number).id

/** The design after an edit that must be accepted; the design before must be as it was. */
function edited(edit: Edit, of: Design = start): Design {
  const before = JSON.stringify(of)
  const result = apply(of, edit)
  expect(JSON.stringify(of)).toBe(before)
  if (result.refused) throw new Error(result.why)
  return result.design
}

/** The code of a refusal; its sentence must be one. */
function refusal(edit: Edit, of: Design = start): string {
  const result = apply(of, edit)
  if (!result.refused) throw new Error('accepted')
  expect(result.why).toMatch(/^\S.*[.!]$/)
  return result.code
}

const copyOfF1 = { ...partNamed(start, 'F1'), id: 'p9', designation: 'F9' }

describe('add', () => {
  test('adds parts with conductors among them and to what is there', () => {
    const c = newConductor('c9', 'W9', { part: 'p9', terminal: '1' }, { part: id('W90'), terminal: '1r' })
    const now = edited({ do: 'add', parts: [copyOfF1], conductors: [c] })
    expect([now.parts.length, now.conductors.length]).toEqual([5, 5])
    expect(now.parts.slice(0, 4).every((p, i) => p === start.parts[i])).toBe(true)
    expect(edited({ do: 'add', parts: [], conductors: [] })).toBe(start)
  })

  test('refuses names that are taken and ends that are nowhere', () => {
    const add = (parts: Design['parts'], conductors: Design['conductors'] = []): string =>
      refusal({ do: 'add', parts, conductors })
    expect(add([{ ...copyOfF1, id: id('F1') }])).toBe('id-taken')
    expect(add([{ ...copyOfF1, designation: 'F1' }])).toBe('designation-taken')
    const ends = [
      { part: id('F1'), terminal: '1' },
      { part: id('W90'), terminal: '1r' },
    ] as const
    expect(add([], [newConductor('c9', 'W1', ...ends)])).toBe('number-taken')
    expect(add([], [newConductor('c9', 'W9', { part: 'nobody', terminal: '1' }, ends[1])])).toBe('no-part')
    expect(add([], [newConductor('c9', 'W9', { ...ends[0], terminal: '3' }, ends[1])])).toBe('no-terminal')
    expect(add([], [{ ...newConductor('c9', 'W9', ...ends), returnOf: 'c99' }])).toBe('no-feed')
  })
})

describe('remove', () => {
  test('takes the conductors of a part along', () => {
    const now = edited({ do: 'remove', parts: [id('E1')], conductors: [wire('W1')] })
    expect(now.parts.map((p) => p.designation)).toEqual(['G1', 'F1', 'W90'])
    expect(now.conductors.map((c) => c.number)).toEqual(['W2'])
  })

  test('leaves a return whose feed goes as a conductor of its own', () => {
    const now = edited({ do: 'remove', parts: [], conductors: [wire('W3')] })
    expect(conductorNumbered(now, 'W4').returnOf).toBeNull()
    expect(now.conductors[0]).toBe(start.conductors[0])
  })

  test('refuses what is not there', () => {
    expect(refusal({ do: 'remove', parts: ['p99'], conductors: [] })).toBe('no-part')
    expect(refusal({ do: 'remove', parts: [], conductors: ['c99'] })).toBe('no-conductor')
  })
})

describe('move', () => {
  test('goes to the grid, and drags corners along only where both ends move alike', () => {
    const both = edited({
      do: 'move',
      to: [
        { part: id('G1'), x: 11, y: 21 },
        { part: id('F1'), x: 71, y: 21 },
      ],
    })
    expect([partNamed(both, 'G1').x, partNamed(both, 'G1').y]).toEqual([10, 20])
    expect(conductorNumbered(both, 'W1').path).toEqual([{ x: 40, y: 30 }])
    const one = edited({ do: 'move', to: [{ part: id('G1'), x: 10, y: 20 }] })
    expect(conductorNumbered(one, 'W1')).toBe(conductorNumbered(start, 'W1'))
    expect(partNamed(one, 'F1')).toBe(partNamed(start, 'F1'))
  })

  test('stays within the drawing, and is nothing where nothing moves', () => {
    const { x, y } = partNamed(start, 'G1')
    expect(edited({ do: 'move', to: [{ part: id('G1'), x, y }] })).toBe(start)
    expect(partNamed(edited({ do: 'move', to: [{ part: id('G1'), x: 1e9, y: -1e9 }] }), 'G1')).toMatchObject({
      x: 20000,
      y: -20000,
    })
    expect(refusal({ do: 'move', to: [{ part: id('G1'), x: Number.NaN, y: 0 }] })).toBe('not-a-place')
    expect(refusal({ do: 'move', to: [{ part: 'p99', x: 0, y: 0 }] })).toBe('no-part')
  })
})

describe('turn and mirror', () => {
  test('turn about the middle; four quarter turns are none', () => {
    const once = edited({ do: 'turn', parts: [id('W90')], by: 90 })
    const [was, is] = [boxOf(partNamed(start, 'W90')), boxOf(partNamed(once, 'W90'))]
    expect([is.w, is.h]).toEqual([was.h, was.w])
    expect(Math.abs(is.x + is.w / 2 - was.x - was.w / 2)).toBeLessThanOrEqual(1.25)
    expect(Math.abs(is.y + is.h / 2 - was.y - was.h / 2)).toBeLessThanOrEqual(1.25)
    let now = start
    for (let i = 0; i < 4; i++) now = edited({ do: 'turn', parts: start.parts.map((p) => p.id), by: 90 }, now)
    expect(now).toEqual(start)
    expect(edited({ do: 'turn', parts: [id('W90')], by: 270 }, once)).toEqual(start)
    expect(refusal({ do: 'turn', parts: ['p99'], by: 90 })).toBe('no-part')
  })

  test('mirror twice is none', () => {
    const once = edited({ do: 'mirror', parts: [id('F1')] })
    expect(partNamed(once, 'F1').mirrored).toBe(true)
    expect(edited({ do: 'mirror', parts: [id('F1')] }, once)).toEqual(start)
    expect(refusal({ do: 'mirror', parts: ['p99'] })).toBe('no-part')
  })
})

describe('part', () => {
  test('renames', () => {
    const now = edited({ do: 'part', part: id('F1'), set: { designation: 'F7', name: 'main fuse' } })
    expect(partNamed(now, 'F7').name).toBe('main fuse')
    expect(edited({ do: 'part', part: id('F1'), set: { designation: 'F1' } })).toBe(start)
  })

  test('keeps designations apart', () => {
    expect(refusal({ do: 'part', part: id('F1'), set: { designation: 'G1' } })).toBe('designation-taken')
    expect(refusal({ do: 'part', part: id('F1'), set: { designation: ' ' } })).toBe('designation-empty')
    expect(refusal({ do: 'part', part: 'p99', set: {} })).toBe('no-part')
  })
})

describe('value', () => {
  const set = (part: string, field: string, value: unknown): Edit =>
    ({ do: 'value', part: id(part), field, value }) as Edit

  test('sets a field', () => {
    expect(partNamed(edited(set('F1', 'ratingA', 80)), 'F1').values.ratingA).toBe(80)
    expect(edited(set('F1', 'ratingA', 100))).toBe(start)
  })

  test('refuses what does not fit the field', () => {
    expect(refusal(set('F1', 'ratingA', -1))).toBe('value')
    expect(refusal(set('F1', 'ratingA', Number.NaN))).toBe('value')
    expect(refusal(set('F1', 'ratingA', Number.POSITIVE_INFINITY))).toBe('value')
    expect(refusal(set('F1', 'ratingA', '80'))).toBe('value')
    expect(refusal(set('W90', 'studs', 2.5))).toBe('value')
    expect(refusal(set('W90', 'pole', 'both'))).toBe('value')
    expect(refusal(set('F1', 'constructor', 1))).toBe('no-field')
    expect(refusal(set('G1', 'restV', 13))).toBe('computed')
    expect(refusal({ ...set('F1', 'ratingA', 1), part: 'p99' } as Edit)).toBe('no-part')
  })

  test('keeps a terminal that is in use', () => {
    const joined = edited({
      do: 'reconnect',
      conductor: wire('W2'),
      end: 'to',
      to: { part: id('W90'), terminal: '6l' },
    })
    const result = apply(joined, set('W90', 'studs', 4))
    expect(result).toMatchObject({ refused: true, code: 'terminal-in-use' })
    expect(result.refused && result.why).toContain('W2')
    expect(partNamed(edited(set('W90', 'studs', 4)), 'W90').values.studs).toBe(4)
  })

  test('leaves a part of unknown kind alone', () => {
    const strange = { ...start, parts: [...start.parts, { ...copyOfF1, kind: 'from-the-future' }] }
    expect(refusal({ do: 'value', part: 'p9', field: 'ratingA', value: 1 }, strange)).toBe('unknown-kind')
  })
})

describe('join and reconnect', () => {
  test('adds one conductor, parallel ones too', () => {
    const c = newConductor('c9', 'W9', { part: id('G1'), terminal: '+' }, { part: id('F1'), terminal: '1' })
    expect(edited({ do: 'join', conductor: c }).conductors.at(-1)).toBe(c)
    expect(refusal({ do: 'join', conductor: { ...c, id: wire('W1') } })).toBe('id-taken')
    expect(refusal({ do: 'join', conductor: { ...c, number: 'W1' } })).toBe('number-taken')
    expect(refusal({ do: 'join', conductor: { ...c, to: { part: id('G1'), terminal: '-' } } })).toBe(
      'short-circuit',
    )
    expect(refusal({ do: 'join', conductor: { ...c, size: '7mm2' } })).toBe('no-size')
  })

  test('takes an end elsewhere and keeps everything but the corners', () => {
    const to = { part: id('W90'), terminal: '5l' }
    const now = conductorNumbered(edited({ do: 'reconnect', conductor: wire('W1'), end: 'to', to }), 'W1')
    expect(now).toEqual({ ...conductorNumbered(start, 'W1'), to, path: [] })
    const same = { part: id('F1'), terminal: '1' }
    expect(edited({ do: 'reconnect', conductor: wire('W1'), end: 'to', to: same })).toBe(start)
    const refused = (terminal: string): string =>
      refusal({ do: 'reconnect', conductor: wire('W1'), end: 'to', to: { part: id('G1'), terminal } })
    expect(refused('-')).toBe('short-circuit')
    expect(refused('+')).toBe('same-terminal')
    expect(refusal({ do: 'reconnect', conductor: 'c99', end: 'to', to })).toBe('no-conductor')
  })
})

describe('conductor', () => {
  const set = (numbers: string[], change: object): Edit => ({
    do: 'conductor',
    conductors: numbers.map(wire),
    set: change,
  })

  test('sets several at once', () => {
    const now = edited(set(['W1', 'W2'], { size: '50mm2', bunched: 3 }))
    expect(now.conductors.map((c) => c.size)).toEqual(['50mm2', '50mm2', null, null])
    expect(now.conductors[2]).toBe(start.conductors[2])
    expect(edited(set(['W1'], { size: '35mm2' }))).toBe(start)
  })

  test.each([
    [{ size: '7mm2' }, 'no-size'],
    [{ lengthM: 0 }, 'length'],
    [{ lengthM: Number.NaN }, 'length'],
    [{ lengthM: 1001 }, 'length'],
    [{ colour: 'red' }, 'colour'],
    [{ insulationC: 20 }, 'insulation'],
    [{ bunched: 0 }, 'bunched'],
    [{ bunched: 1.5 }, 'bunched'],
    [{ number: 'W2' }, 'number-taken'],
    [{ number: '' }, 'number-empty'],
    [{ returnOf: 'c99' }, 'no-feed'],
    [{ designCurrent: { amps: 5, reason: ' ' } }, 'no-reason'],
    [{ designCurrent: { amps: -5, reason: 'measured' } }, 'design-current'],
    [{ path: [{ x: 1e6, y: 0 }] }, 'not-a-place'],
  ])('refuses %o as %s', (change, code) => {
    expect(refusal(set(['W1'], change))).toBe(code)
  })

  test('refuses one number for several, itself as its return, and what is not there', () => {
    expect(refusal(set(['W1', 'W2'], { number: 'W9' }))).toBe('number-taken')
    expect(refusal(set(['W1'], { returnOf: wire('W1') }))).toBe('no-feed')
    expect(refusal({ do: 'conductor', conductors: ['c99'], set: {} })).toBe('no-conductor')
  })
})

describe('settings', () => {
  test('sets', () => {
    expect(edited({ do: 'settings', set: { systemV: 24, date: '2026-02-28' } }).settings.systemV).toBe(24)
    expect(edited({ do: 'settings', set: { systemV: 12 } })).toBe(start)
  })

  test.each([
    [{ systemV: 36 }, 'system-voltage'],
    [{ ambientC: 400 }, 'temperature'],
    [{ coldestC: Number.NaN }, 'temperature'],
    [{ date: '2026-02-30' }, 'date'],
    [{ ruleSet: '' }, 'no-rule-set'],
  ])('refuses %o as %s', (set, code) => {
    expect(refusal({ do: 'settings', set } as Edit)).toBe(code)
  })
})

test('all: one refusal refuses the whole', () => {
  const good: Edit = { do: 'part', part: id('F1'), set: { name: 'main' } }
  const bad: Edit = { do: 'part', part: 'p99', set: { name: 'x' } }
  expect(refusal({ do: 'all', edits: [good, bad] })).toBe('no-part')
  expect(
    partNamed(edited({ do: 'all', edits: [good, { do: 'mirror', parts: [id('F1')] }] }), 'F1'),
  ).toMatchObject({
    name: 'main',
    mirrored: true,
  })
})
