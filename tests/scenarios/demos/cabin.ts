import type { Design } from '../../../engine/model/design'
import { Draft } from './draft'
import { sized } from './sized'

/** A 48 V mountain cabin. Invented. Four 12 V batteries in series, AWG conductors, an inverter, a 48 to 12 V converter for the lights. */
export function cabin(): Design {
  const d = new Draft(
    'demo-cabin',
    {
      name: 'Mountain cabin, 48 V series bank',
      customer: 'Larkspur Huts (invented)',
      vehicle: 'Timber cabin, off the grid',
      designer: 'R. Alder',
      installer: 'Alder & Wren Vehicle Electrics (invented)',
      contact: 'Telephone 555-0142\nworkshop@example.com',
      revision: 'A',
      date: '2025-11-18',
      systemV: 48,
      ruleSet: 'us-33cfr183',
      ambientC: 30,
      coldestC: -20,
      notes: 'One string of four batteries. The fuse stands at the top of the string.',
    },
    11,
  )
  const battery = {
    chemistry: 'agm',
    volts: '12',
    capacityAh: 150,
    dischargeA: 120,
    chargeA: 45,
    internalMOhm: 4,
  }
  for (const i of [1, 2, 3, 4])
    d.part('battery', `G${i}`, `Battery ${i} of the string`, 'battery room', battery)
  d.part('fuse-cartridge', 'F1', 'String fuse', 'battery room', {
    ratingA: 125,
    class: 't',
    voltageV: 125,
    breakingKA: 20,
    breakingV: 125,
    fullDuty: true,
    holdsTimes: 2.5,
    holdsS: 6,
    clearsTimes: 3.5,
    clearsS: 3,
  })
    .part('isolator', 'Q1', 'Main isolator', 'battery room', { ratingA: 200, voltageV: 60 })
    .part('fuse-bar', 'F2', 'Main distribution', 'plant room', {
      class: 'other',
      voltageV: 80,
      breakingKA: 5,
      breakingV: 80,
      holdsTimes: 2,
      holdsS: 6,
      clearsTimes: 4,
      clearsS: 2,
      feeds: 2,
      ratingA: 250,
      ways: [
        { ratingA: 100, label: 'Inverter' },
        { ratingA: 60, label: 'Solar' },
        { ratingA: 20, label: '12 V converter' },
        { ratingA: null, label: 'Spare' },
      ],
    })
    .part('shunt', 'B1', 'Battery shunt', 'plant room', {
      role: 'battery',
      ratingA: 300,
      millivolts: 50,
      dataPlug: '8p8c',
    })
    .part('busbar', 'W1', 'Source negative bar', 'plant room', {
      studs: 6,
      pole: 'negative',
      ratingA: 250,
      stud: 'M10',
    })
    .part('shunt', 'B2', 'Load-side shunt', 'plant room', {
      role: 'load',
      ratingA: 200,
      millivolts: 50,
      dataPlug: '8p8c',
    })
    .part('busbar', 'W2', 'Load return bar', 'plant room', {
      studs: 6,
      pole: 'negative',
      ratingA: 150,
      stud: 'M8',
    })
  d.run('G1.+', 'F1.1', '2awg', 0.15, { sheathed: true })
  d.run('G2.+', 'G1.-', '2awg', 0.12, { sheathed: true, remark: 'series link' })
  d.run('G3.+', 'G2.-', '2awg', 0.12, { sheathed: true, remark: 'series link' })
  d.run('G4.+', 'G3.-', '2awg', 0.12, { sheathed: true, remark: 'series link' })
  d.run('F1.2', 'Q1.1', '2awg', 0.6)
  d.run('Q1.2', 'F2.in1', '2awg', 1.4)
  d.back('G4.-', 'B1.b', '2awg', 1.6)
  d.back('B1.s', 'W1.1l', '2awg', 0.3)
  d.back('W1.1r', 'B2.b', '2awg', 0.3)
  d.back('B2.s', 'W2.1l', '2awg', 0.3)

  d.part('inverter', 'T1', 'Inverter', 'plant room', { powerW: 3000, efficiency: 92, lowestV: 42 })
  d.pair(['F2.1', 'T1.+'], ['T1.-', 'W2.2l'], '4awg', 1.2)

  d.part('pv-array', 'G5', 'Roof array', 'roof', {
    series: 3,
    parallel: 2,
    vocV: 37.6,
    iscA: 9.2,
    vmpV: 31,
    impA: 8.7,
    moduleW: 270,
    vocPerKelvin: -0.3,
    maxFuseA: 15,
  })
    .part('breaker', 'F3', 'Array breaker', 'plant room', {
      ratingA: 30,
      class: 'magnetic',
      voltageV: 250,
      breakingKA: 6,
      breakingV: 250,
    })
    .part('solar-controller', 'T2', 'Solar controller', 'plant room', {
      method: 'mppt',
      outputA: 40,
      pvMaxV: 150,
      pvMaxA: 40,
      data: 'wired',
      dataPlug: '8p8c',
    })
  const array = d.run('G5.+', 'F3.1', '10awg', 9)
  d.run('F3.2', 'T2.pv+', '10awg', 0.5)
  d.back('G5.-', 'T2.pv-', '10awg', 9.5, { returnOf: array })
  d.pair(['T2.bat+', 'F2.2'], ['T2.bat-', 'W1.2l'], '8awg', 0.9)

  d.part('step-down', 'T3', '48 to 12 V converter', 'plant room', {
    outputA: 25,
    outputV: 12,
    efficiency: 90,
    isolated: false,
  }).part('fuse-block', 'F4', '12 V block', 'hall', {
    class: 'c',
    voltageV: 32,
    breakingKA: 1,
    breakingV: 32,
    ratingA: 100,
    returnBar: true,
    ways: [
      { ratingA: 5, label: 'Kitchen light' },
      { ratingA: 5, label: 'Living light' },
      { ratingA: 5, label: 'Bunk lights' },
      { ratingA: 10, label: 'Water pump' },
      { ratingA: 10, label: 'Sockets' },
      { ratingA: 3, label: 'Monitor' },
      { ratingA: null, label: 'Spare' },
    ],
  })
  d.run('F2.3', 'T3.in+', '10awg', 1.2)
  d.back('T3.-', 'W2.3l', '8awg', 1.2)
  const twelve = d.run('T3.out+', 'F4.in', '8awg', 4)
  d.back('F4.return', 'W2.3r', '8awg', 4, { returnOf: twelve })
  const loads = [
    ['lamp', 'E1', 'Kitchen light', 2, '14awg'],
    ['lamp', 'E2', 'Living light', 2.5, '14awg'],
    ['lamp', 'E3', 'Bunk lights', 2, '14awg'],
    ['pump', 'M1', 'Water pump', 7, '12awg'],
    ['socket', 'X1', 'Sockets', 6, '12awg'],
  ] as const
  loads.forEach(([kind, designation, name, currentA, size], i) => {
    d.part(kind, designation, name, 'cabin', { currentA })
    d.pair([`F4.${i + 1}`, `${designation}.+`], [`${designation}.-`, `F4.r${i + 1}`], size, 4 + i)
  })
  d.part('monitor-hub', 'K1', 'Monitor hub', 'hall', {
    dataPorts: 3,
    tankInputs: 1,
    temperatureInputs: 1,
    dataPlug: '8p8c',
    supplyA: 0.3,
  })
  d.pair(['F4.6', 'K1.+'], ['K1.-', 'F4.r6'], '16awg', 1)
  d.data('B1.data', 'K1.data1', 4).data('B2.data', 'K1.data2', 4).data('T2.data', 'K1.data3', 4)
  return sized(d.build())
}
