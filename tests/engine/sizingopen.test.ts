import { expect, test } from 'vitest'
import { sizeIt } from '../../engine/calc/sizing/sizeit'
import { keptWords } from '../../engine/words/sizing'
import { design } from '../build'

/** A battery lead to a charger whose other pole is not joined yet: no current in use, and nothing limits a fault. */
const half = design()
  .part('starting-battery', 'G1')
  .part('alternator-charger', 'T1', {})
  .join('G1.+', 'T1.in+', { lengthM: 3 })

test('a lead that no current uses yet and no device guards gets no size', () => {
  const sizing = sizeIt(half.build(), 'all')
  if ('infeasible' in sizing) throw new Error('nothing can be chosen')
  expect(sizing.changes).toEqual([])
  expect(sizing.kept).toEqual([{ conductor: 'c1', because: { key: 'no-limit' } }])
})

test('behind a fuse it is sized for what the fuse lets through', () => {
  const of = design()
    .part('starting-battery', 'G1')
    .part('fuse-bolt-in', 'F1', { ratingA: 60 })
    .part('alternator-charger', 'T1')
    .join('G1.+', 'F1.1', { lengthM: 0.1 })
    .join('F1.2', 'T1.in+', { lengthM: 3 })
    .build()
  const sizing = sizeIt(of, 'all')
  if ('infeasible' in sizing) throw new Error('nothing can be chosen')
  const behind = sizing.choices.find((c) => 'conductor' in c && c.conductor === 'c2')
  expect(behind?.because.key).toBe('device')
})

test('what is left for one reason is told in one line', () => {
  const of = half
    .join('G1.+', 'T1.in+', { lengthM: 3 })
    .part('fuse-blade', 'F1', { ratingA: 5, ratingLocked: true })
    .build()
  const kept = [
    ...of.conductors.map(({ id }) => ({ conductor: id, because: { key: 'no-limit' as const } })),
    { part: of.parts.at(-1)!.id, way: 'fuse', because: { key: 'locked' as const } },
  ]
  expect(keptWords(kept, of)).toEqual([
    'W1 and W2 are left as they are. Nothing stated limits the current.',
    'F1 is left as it is. The rating is locked.',
  ])
})
