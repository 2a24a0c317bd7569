import { writeDesign } from '../../engine'
import { design } from '../build'

/**
 * A small system, invented: one battery, a main fuse, a load-side shunt, a fuse block, a lamp and a pump, every
 * conductor with size and length.
 */
export const smallVan = (): string =>
  writeDesign({
    ...design({ name: 'Small van', systemV: 12 })
      .part(
        'battery',
        'G1',
        { capacityAh: 200, dischargeA: 200, chargeA: 100 },
        { name: 'House battery', x: 20, y: 60 },
      )
      .part('fuse-bolt-in', 'F1', { ratingA: 100 }, { name: 'Main fuse', x: 70, y: 40 })
      .part('fuse-block', 'F2', { ratingA: 100, ways: ways(10, 15, 5) }, { name: 'Loads', x: 120, y: 30 })
      .part('shunt', 'B1', { role: 'load', ratingA: 300, millivolts: 50 }, { x: 70, y: 110 })
      .part(
        'busbar',
        'X1',
        { pole: 'negative', ratingA: 150, studs: 6 },
        { name: 'Load returns', x: 130, y: 100 },
      )
      .part('lamp', 'E1', { currentA: 3 }, { name: 'Reading lamp', x: 200, y: 30 })
      .part('pump', 'M1', { currentA: 8 }, { name: 'Water pump', x: 200, y: 60 })
      .join('G1.+', 'F1.1', { size: '35mm2', lengthM: 0.15, colour: 'RD' })
      .join('F1.2', 'F2.in', { size: '35mm2', lengthM: 1, colour: 'RD' })
      .join('F2.1', 'E1.+', { size: '1.5mm2', lengthM: 3, colour: 'RD' })
      .join('E1.-', 'X1.2r', { size: '1.5mm2', lengthM: 3, returnOf: 'W3' })
      .join('F2.2', 'M1.+', { size: '2.5mm2', lengthM: 4, colour: 'RD' })
      .join('M1.-', 'X1.3r', { size: '2.5mm2', lengthM: 4, returnOf: 'W5' })
      .join('X1.1l', 'B1.s', { size: '35mm2', lengthM: 0.5 })
      .join('B1.b', 'G1.-', { size: '35mm2', lengthM: 0.5 })
      .build(),
    id: 'small-van',
  })

const ways = (...ratings: readonly number[]) => ratings.map((ratingA) => ({ ratingA, label: '' }))
