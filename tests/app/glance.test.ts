import { expect, it } from 'vitest'
import { glanceOf } from '../../app/panels/glance'
import { analyse, type RunAnswer } from '../../engine'
import { design } from '../build'

/** Common practice: what it must carry is no more than the device, and that no more than what the conductor bears. */
const plain = design({ systemV: 12 })
  .part('battery', 'G1', { dischargeA: 200 })
  .part('fuse-bolt-in', 'F1', { ratingA: 40 })
  .part('load', 'E1', { currentA: 20 })
  .join('G1.+', 'F1.1', { size: '35mm2', lengthM: 0.1 })
  .join('E1.+', 'F1.2', { size: '10mm2', lengthM: 2 })
  .join('E1.-', 'G1.-', { size: '10mm2', lengthM: 2, returnOf: 'W2' })
  .build()
const run = (number: string): RunAnswer =>
  analyse(plain).answers.runs.get(plain.conductors.find((c) => c.number === number)!.id)!

it('shows the greater direction, what the fuse lets last, and the ampacity', () => {
  const { carries, lets, bears, level } = glanceOf(run('W2'))
  expect([carries.way, carries.testId, carries.other]).toEqual(['←', 'backward', null])
  expect(lets).toEqual({ value: 40 })
  expect('value' in bears && bears.value).toBeGreaterThan(40)
  expect(level).toBeNull()
})

it('takes what is not known for the greatest, and shows both directions then', () => {
  const gap = { notChecked: 'missing-figure', parts: [], conductors: [] }
  const { carries, lets, level } = glanceOf({ ...run('W2'), forward: gap, to: gap, verdict: gap })
  expect(carries.witness).toBe(gap)
  expect(carries.other?.way).toBe('←')
  expect(lets).toBe(gap)
  expect(level).toBe('not-checked')
})
