import { expect, it } from 'vitest'
import { operate } from '../../../engine/calc/operate'
import type { OperatingNote } from '../../../engine/calc/operating/state'
import { usualState } from '../../../engine/calc/operating/usual'
import { noOperatingWords, operatingNoteWords } from '../../../engine/words/operate'
import { design } from '../../build'

const d = design()
  .part('load', 'E1', {}, { name: 'Fridge' })
  .part('load', 'E2')
  .part('fuse-blade', 'F1')
  .join('E1.+', 'F1.1')
  .build()

const words = (note: Partial<OperatingNote> & Pick<OperatingNote, 'note'>): string =>
  operatingNoteWords({ parts: ['p1'], conductors: [], ...note }, d)

it('a note is a sentence on one part or on several', () => {
  expect(words({ note: 'no-battery-feeds' })).toBe(
    'E1 Fridge is fed by no battery, however the switches stand.',
  )
  expect(words({ note: 'missing-figure', parts: ['p1', 'p2'] })).toBe(
    'E1 Fridge and E2 are left out: a figure is missing.',
  )
  expect(words({ note: 'missing-run', parts: [], conductors: ['c1'] })).toBe(
    'A resistance is guessed for W1: size or length is missing.',
  )
})

it('a limit that is passed is named with its figures', () => {
  expect(words({ note: 'above-rating', parts: ['p3'], amps: 12.34, limitA: 10 })).toBe(
    'F1 carries more than its rating: 12.3 A of 10 A.',
  )
})

it('says why there is no operating point', () => {
  const none = operate(d, usualState(d))
  expect(none.ok || noOperatingWords(none, d)).toBe('Nothing can run: the design has no battery.')
  expect(noOperatingWords({ ok: false, reason: 'relays-chatter', parts: ['p3'] }, d)).toBe(
    'F1 would switch on and off without end.',
  )
  expect(noOperatingWords({ ok: false, reason: 'no-steady-state', parts: [] }, d)).toBe(
    'No steady state was found.',
  )
})
