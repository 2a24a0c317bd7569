import { expect, it, vi } from 'vitest'
import { envelopes } from '../../../engine/calc/envelope'
import type { NetworkForm } from '../../../engine/calc/form'
import { prepare } from '../../../engine/calc/prepare'
import { barThrough } from '../../../engine/calc/through'

vi.mock('../../../engine/math/simplex', () => ({ simplex: () => () => ({ status: 'no-convergence' }) }))

it('a search that ends without a verdict gives a reason, and no figure', () => {
  // Two batteries in series, a load on each and one across both: three nets in a ring. Two leads side by side in the middle.
  const device = (
    id: string,
    positive: string,
    negative: string,
    max: number,
  ): NetworkForm['devices'][number] => ({
    id,
    positive,
    negative,
    min: max - 100,
    max,
    sustainedFault: max,
  })
  const form: NetworkForm = {
    nodes: ['minus', 'low', 'middle', 'top'],
    branches: [
      { id: 'one', from: 'low', to: 'middle', resistance: 0.01, kind: 'conductor' },
      { id: 'other', from: 'low', to: 'middle', resistance: 0.02, kind: 'conductor' },
    ],
    devices: [
      device('lower', 'low', 'minus', 100),
      device('upper', 'top', 'middle', 100),
      device('load24', 'top', 'minus', 0),
      device('load12', 'middle', 'minus', 0),
    ],
  }
  const p = prepare(form)
  const r = envelopes(p)
  expect(r.envelope(0)).toEqual({ branch: 'one', noAnswer: 'no-convergence' })
  expect(r.max[1]).toBeNaN()
  expect(r.witness(0, 'max')).toEqual({ devices: [], ray: [] })
  expect(barThrough(p, r, p.nodeIndex.get('middle')!)).toEqual({ notChecked: 'no-convergence' })
  expect(barThrough(p, r, p.nodeIndex.get('top')!)).toEqual({ notChecked: 'no-convergence' })
})
