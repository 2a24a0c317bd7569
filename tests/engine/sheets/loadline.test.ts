import { describe, expect, it } from 'vitest'
import type { Design } from '../../../engine/index'
import { analyse } from '../../../engine/index'
import { loadDeviceOf, meteredOf } from '../../../engine/sheets/loadline'
import { partNamed } from '../../build'
import { cabin } from '../../scenarios/demos/cabin'
import { mistakes } from '../../scenarios/demos/mistakes'

/** What the drawing says of one load. */
function said(design: Design, designation: string): string {
  const part = partNamed(design, designation)
  return meteredOf(design, part, loadDeviceOf(design, part)!, analyse(design).answers)
}

// Common practice, no source: what a converter draws is counted where its input returns, and so is what hangs on it.
describe('what the drawing says of metering', () => {
  it('a load behind a converter that returns behind the load-side shunt is measured', () =>
    expect(said(cabin(), 'E1')).toBe('measured'))

  it('a load that bypasses the load-side shunt is not, and one beside it is', () => {
    expect(said(mistakes(), 'E5')).toBe('not measured')
    expect(said(mistakes(), 'E4')).toBe('measured')
  })
})
