import { describe, expect, it } from 'vitest'
import { analyse, type Design, type Finding, sentence } from '../../../engine/index'
import type { Values } from '../../../engine/model/fields'
import { lookedFor, RULES } from '../../../engine/rules/all'
import { breakingWords } from '../../../engine/words/breaking'
import { listed } from '../../../engine/words/names'
import { guardWords, verdictWords, whyCurrent, whyNot, whyProtected } from '../../../engine/words/why'
import { Random } from '../../reference/random'
import { DEMOS } from '../../scenarios/demos/all'
import { bench } from '../rules/bench'
import { randomDesign } from '../rules/randomdesign'
import { of, system } from '../rules/system'

/** Ids of the random designs read zz1 and yy1, so that one that slips into a sentence shows. */
const WRONG =
  /undefined|NaN|\[object|Infinity|\b(zz|yy)\d+|\bsafe\b|\bsafely\b|\bcompliant\b| {2}| ,|\.\.| \./i

const designs: readonly Design[] = [
  ...DEMOS.map((d) => d.make()),
  ...Array.from({ length: 60 }, (_, i) => {
    const random = new Random(4000 + i)
    return randomDesign(random, random.whole(1, 40), i % 2 === 0 ? 'wild' : 'sensible')
  }),
]

describe('sentences of findings', () => {
  it('ids are unique and every rule has words, whatever its facts', () => {
    expect(new Set(RULES.map((r) => r.id)).size).toBe(RULES.length)
    for (const { id } of RULES) {
      const bare: Finding = {
        key: id,
        rule: id,
        level: 'note',
        parts: [],
        conductors: [],
        source: 'method',
        facts: {},
      }
      const { title, text, todo } = sentence(bare, designs[0]!)
      for (const words of [title, text, todo]) expect(words.trim(), id).not.toBe('')
    }
  })

  it('no sentence holds a slip, an internal id, or a promise', () => {
    const seen = new Set<string>()
    for (const d of designs)
      for (const f of analyse(d).findings) {
        seen.add(f.rule)
        const { title, text, todo } = sentence(f, d)
        for (const words of [title, text, todo]) expect(words, `${f.rule}: ${words}`).not.toMatch(WRONG)
        for (const words of [text, todo]) expect(words, `${f.rule}: ${words}`).toMatch(/^[A-Z0-9≤].*[.?]$/s)
        expect(title, f.rule).toMatch(/^[A-Z].*[^.]$/)
        if (f.fix) expect(f.fix.title, f.rule).not.toMatch(WRONG)
      }
    expect(seen.size).toBeGreaterThan(35)
  })

  it('one and many', () => {
    const one = system().part('lamp', 'E3', { currentA: 1 })
    const d = (count: 1 | 2): Design => {
      let now = one
        .part('busbar', 'W5', { studs: 6, pole: 'positive', ratingA: 100 })
        .part('lamp', 'E4', { currentA: 1 })
      now = now.join('W5.1l', 'E3.+', {}).join('E3.-', 'W2.4r', {})
      if (count === 2) now = now.join('W5.2l', 'E4.+', {}).join('E4.-', 'W2.5r', {})
      return now.build()
    }
    const text = (count: 1 | 2) => sentence(of('J6', d(count))[0]!, d(count)).text
    expect(text(1)).toBe('No source reaches both terminals of E3, so its current is in no figure.')
    expect(text(2)).toBe('No source reaches both terminals of E3 and E4, so their currents are in no figure.')
    expect(listed(['a'])).toBe('a')
    expect(listed(['a', 'b', 'c'])).toBe('a, b and c')
    expect(listed(['a', 'b', 'c', 'd', 'e'])).toBe('a, b, c and 2 more')
  })
})

describe('why a figure is as it is', () => {
  it('says who takes and who gives, greatest first', () => {
    const d = system().build()
    const { answers } = analyse(d)
    const run = answers.runs.get(d.conductors.find((c) => c.number === 'E1+')!.id)!
    const { forward, from } = run
    expect('value' in forward && whyCurrent(forward.value, d)).toEqual(['G1 gives 10 A', 'E1 takes 10 A'])
    expect('value' in from && whyProtected(from.value, d)).toEqual(['F2 limits it to 15 A'])
    expect(verdictWords(run, d)).toBe('Protected')
    expect(guardWords(run, d)).toContain('F2:1 15 A')
  })

  it('a conductor that nothing can feed is not called protected', () => {
    const d = system()
      .part('busbar', 'W5', { studs: 4, pole: 'positive', ratingA: 100 })
      .part('lamp', 'E3', { currentA: 1 })
    const dead = d.join('W5.1l', 'E3.+', { size: '1mm2', lengthM: 1, number: 'dead' }).build()
    const run = analyse(dead).answers.runs.get(dead.conductors.find((c) => c.number === 'dead')!.id)!
    expect(verdictWords(run, dead)).toBe('Nothing can feed it')
  })

  it('tells every reason of the random designs in words', () => {
    for (const d of designs)
      for (const run of analyse(d).answers.runs.values())
        for (const answer of [run.forward, run.from, run.verdict, run.sustained, run.ampacity])
          if (answer !== null && 'notChecked' in answer) {
            const words = whyNot(answer, d)
            expect(words).toMatch(/^Not checked, because .*\.$/)
            expect(words).not.toMatch(WRONG)
            expect(words).not.toMatch(/because [a-z]+-[a-z-]+[:.]/)
          }
  })
})

describe('what a sentence must name', () => {
  it('the terminal to which nothing is joined', () => {
    const d = system({}, 'return1').build()
    const [found] = of('J2', d)
    expect(sentence(found!, d).text).toBe(
      'Nothing is joined to the terminal "negative" of E1, so its current is in no figure.',
    )
  })

  it('of how many volts a drop is a percentage', () => {
    const thin = system({}).build()
    const long = {
      ...thin,
      conductors: thin.conductors.map((c) => (c.number === 'E1+' ? { ...c, lengthM: 40 } : c)),
    }
    expect(sentence(of('E1', long)[0]!, long).text).toMatch(
      /% of 12 V, with 10 % allowed for general circuits/,
    )
  })

  it('what the check of each finding looks for', () => {
    for (const { id } of RULES) expect(lookedFor(id)).not.toBe(id)
    expect(lookedFor('no such check')).toBe('no such check')
  })
})

describe('what a device interrupts, on the card of a conductor', () => {
  const words = (values: Values): string[] => {
    const d = bench({ parts: { F1: values } }).build()
    const w2 = d.conductors.find((c) => c.number === 'W2')!
    return breakingWords(analyse(d).answers.runs.get(w2.id)!, d)
  }

  it('is told with the voltage at which it is stated, and as not checked where it is not', () => {
    expect(words({})).toEqual(['F1: 5 kA up to 32 V'])
    expect(words({ breakingV: null })).toEqual([
      'F1: 5 kA; up to which voltage is not stated, so not checked',
    ])
    expect(words({ breakingKA: null })).toEqual(['F1: not stated, so not checked'])
  })
})
