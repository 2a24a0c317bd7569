import type { NetworkBranch, NetworkDevice, NetworkForm } from '../../engine/calc/form'

/** Small networks in one expression, for cases that are worked by hand. */

export const wire = (id: string, from: string, to: string): NetworkBranch => ({
  id,
  from,
  to,
  resistance: 0.001,
  kind: 'conductor',
})
export const fuse = (id: string, from: string, to: string, rating: number): NetworkBranch => ({
  id,
  from,
  to,
  resistance: 0.0002,
  kind: 'fuse',
  rating,
})
export const battery = (id: string, positive: string, negative: string): NetworkDevice => ({
  id,
  positive,
  negative,
  min: -100,
  max: 200,
  sustainedFault: 'unlimited',
  emf: 12.8,
  internalResistance: 0.003,
})
export const source = (id: string, positive: string, negative: string, amps: number): NetworkDevice => ({
  id,
  positive,
  negative,
  min: 0,
  max: amps,
  sustainedFault: amps,
})
export const load = (id: string, positive: string, negative: string, amps: number): NetworkDevice => ({
  id,
  positive,
  negative,
  min: -amps,
  max: 0,
  sustainedFault: 0,
})

export function network(branches: NetworkBranch[], devices: NetworkDevice[]): NetworkForm {
  const ends = [
    ...branches.flatMap((b) => [b.from, b.to]),
    ...devices.flatMap((d) => [d.positive, d.negative]),
  ]
  return { nodes: [...new Set(ends)], branches, devices }
}
