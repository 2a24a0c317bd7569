import { expect, it } from 'vitest'
import { changesOf } from '../../app/panels/changes'
import { design } from '../build'

const d = design()
  .part('battery', 'G1', { capacityAh: 100 })
  .part('fuse-bolt-in', 'F1', { ratingA: 100 })
  .join('G1.+', 'F1.1', { size: '1.5mm2' })
  .build()
const [g1, f1] = d.parts
const [w1] = d.conductors

it('says for each field what it is and what it would be', () => {
  expect(
    changesOf(
      {
        do: 'all',
        edits: [
          { do: 'conductor', conductors: [w1!.id], set: { size: '16mm2', sheathed: true } },
          { do: 'value', part: f1!.id, field: 'ratingA', value: 60 },
        ],
      },
      d,
    ),
  ).toEqual(['W1: size 1.5 mm² → 16 mm²', 'W1: sheathed throughout no → yes', 'F1: rating 100 → 60'])
})

it('names what comes, goes and is joined otherwise', () => {
  expect(changesOf({ do: 'remove', parts: [g1!.id], conductors: [w1!.id] }, d)).toEqual([
    'W1 is taken off',
    'G1 is taken off',
  ])
  expect(
    changesOf({ do: 'reconnect', conductor: w1!.id, end: 'to', to: { part: f1!.id, terminal: '2' } }, d),
  ).toEqual(['W1 is moved to F1, terminal 2'])
})
