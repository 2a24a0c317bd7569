import { describe, expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import { builtEdit, tickEdit } from '../../../engine/edit/bench'
import type { BuiltFact } from '../../../engine/model/bench'
import type { Design } from '../../../engine/model/design'
import { analyse } from '../../../engine/rules/analyse'
import { builtFindings } from '../../../engine/rules/builtfindings'
import { sentence } from '../../../engine/words/findings'
import { conductorNumbered, partNamed } from '../../build'
import { bench, findings } from './bench'

const drawn = bench().build()

function built(number: string, fact: BuiltFact, of: Design = drawn): Design {
  const edit = builtEdit(of, conductorNumbered(of, number), fact, {
    at: '2026-03-04T09:30:00.000Z',
    by: 'tablet',
  })
  const result = apply(of, edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}

const worse = (d: Design) =>
  builtFindings(d, analyse(d).findings)!.worse.map((f) => `${f.rule} ${f.level} ${f.conductors.join(' ')}`)

describe('A1: built otherwise than drawn', () => {
  test('a thinner conductor is a warning at once, though it would bear what it must carry', () => {
    const d = built('W3', { what: 'size', value: '1.5mm2' })
    const [finding] = findings(d, 'A1')
    expect(finding).toMatchObject({
      level: 'warning',
      conductors: ['c3'],
      actual: { value: 1.5, unit: 'mm²' },
      limit: { value: 2.5, unit: 'mm²' },
    })
    expect(sentence(finding!, d).title).toBe('Built thinner than drawn')
    expect(sentence(finding!, d).text).toContain(
      'W3 is drawn with size: 2.5 mm². The workshop has built it with 1.5 mm².',
    )
  })

  test('a thicker or longer one is a note, another terminal a warning; one as drawn is nothing', () => {
    const levels = (fact: BuiltFact) => findings(built('W3', fact), 'A1').map((f) => f.level)
    expect(levels({ what: 'size', value: '4mm2' })).toEqual(['note'])
    expect(levels({ what: 'lengthM', value: 3.5 })).toEqual(['note'])
    expect(levels({ what: 'to', value: { part: partNamed(drawn, 'M1').id, terminal: '+' } })).toEqual([
      'warning',
    ])
    expect(levels({ what: 'size', value: '2.5mm2' })).toEqual([])
    expect(levels({ what: 'size', value: null })).toEqual([])
    expect(findings(drawn, 'A1')).toEqual([])
  })

  test('a size that nobody knows counts as thinner', () => {
    expect(findings(built('W3', { what: 'size', value: 'own:9' }), 'A1').map((f) => f.level)).toEqual([
      'warning',
    ])
  })

  test('its fix draws it as it was built', () => {
    const d = built('W3', { what: 'size', value: '4mm2' })
    const result = apply(d, findings(d, 'A1')[0]!.fix!.edit)
    expect(!result.refused && conductorNumbered(result.design, 'W3').size).toBe('4mm2')
    expect(!result.refused && findings(result.design, 'A1')).toEqual([])
  })
})

describe('A2: made, but not in the drawing any more', () => {
  const now = { at: '2026-03-04T09:30:00.000Z', by: 'tablet' }
  const ticked = (step: 'cut' | 'terminated', done = true): Design => {
    const result = apply(drawn, tickEdit(drawn, conductorNumbered(drawn, 'W3'), step, done, now))
    if (result.refused) throw new Error(result.why)
    return result.design
  }
  const without = (d: Design): Design => ({ ...d, conductors: d.conductors.filter((c) => c.number !== 'W3') })

  test('a conductor that hangs in the vehicle is a warning, one that was only begun a note', () => {
    const [hangs] = findings(without(ticked('terminated')), 'A2')
    expect(hangs).toMatchObject({ level: 'warning', facts: { number: 'W3', fastened: true } })
    expect(sentence(hangs!, without(ticked('terminated'))).text).toContain('W3 is recorded as terminated')
    expect(findings(without(ticked('cut')), 'A2').map((f) => f.level)).toEqual(['note'])
  })

  test('while it is in the drawing, or nothing is done on it, there is nothing to say', () => {
    expect(findings(ticked('terminated'), 'A2')).toEqual([])
    expect(findings(without(ticked('cut', false)), 'A2')).toEqual([])
  })
})

describe('the checks as built', () => {
  test('there are none where nothing was built otherwise', () => {
    expect(builtFindings(drawn, [])).toBeNull()
  })

  // 16 mm² behind an 80 A fuse stands; 6 mm² does not: its ampacity is below the rating by every table in use.
  test('a feed built too thin for its fuse is found as built, and not in the drawing', () => {
    const d = built('W2', { what: 'size', value: '6mm2' })
    expect(findings(d, 'P2', 'C1')).toEqual([])
    expect(worse(d)).toContain('P2 danger c2')
    expect(conductorNumbered(builtFindings(d, [])!.design, 'W2').size).toBe('6mm2')
  })

  test('a return built far too long is found by its drop', () => {
    const d = built('W4', { what: 'lengthM', value: 60 })
    expect(worse(d).some((line) => line.startsWith('E1'))).toBe(true)
  })

  test('what the drawing gives already is not told again', () => {
    const thin = bench({ runs: { W2: { size: '6mm2' } } }).build()
    expect(findings(thin, 'P2')).toHaveLength(1)
    expect(worse(built('W5', { what: 'lengthM', value: 3.1 }, thin))).toEqual([])
  })

  test('a size that nobody knows is not checked, and never passed', () => {
    expect(
      worse(built('W2', { what: 'size', value: 'own:9' })).some((line) => line.includes('not-checked c2')),
    ).toBe(true)
  })
})
