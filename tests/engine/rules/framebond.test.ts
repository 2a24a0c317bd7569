import { describe, expect, it } from 'vitest'
import { of, system, told } from './system'

// NFPA 70 article 552 (2008), as restated by a public page: the bond from battery to frame is copper of 8 AWG (8.366 mm²)
// at least, and no thinner than the battery lead where that is thicker.
describe('J10, the bond to the frame', () => {
  const bonded = (size: string) =>
    system().part('chassis-point', 'X9').join('W1.3l', 'X9.31', { size, lengthM: 1, number: 'bond' }).build()

  it('is found where it is thinner than the battery lead of 35 mm²', () => {
    const d = bonded('25mm2')
    const found = of('J10', d)
    expect(found.map((f) => told(d, f))).toEqual(['warning bond back1'])
    expect(found[0]).toMatchObject({ actual: { value: 25, unit: 'mm²' }, limit: { value: 35, unit: 'mm²' } })
  })

  it('is not found at the size of the lead', () => expect(of('J10', bonded('35mm2'))).toEqual([]))

  it('asks for 8 AWG beside a thin lead', () => {
    const d = system({}, 'batteryShunt')
      .join('G1.-', 'W1.1l', { size: '4mm2', lengthM: 0.3, number: 'lead' })
      .part('chassis-point', 'X9')
      .join('W1.3l', 'X9.31', { size: '6mm2', lengthM: 1, number: 'bond' })
      .build()
    expect(of('J10', d).map((f) => f.limit?.value)).toEqual([8.366])
  })

  it('leaves a battery whose only lead goes to the frame', () => {
    const d = system({}, 'batteryShunt')
      .part('chassis-point', 'X9')
      .join('G1.-', 'X9.31', { size: '10mm2', lengthM: 0.3 })
      .build()
    expect(of('J10', d)).toEqual([])
  })
})
