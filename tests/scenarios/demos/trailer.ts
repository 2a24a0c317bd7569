import type { Design } from '../../../engine/model/design'
import { Draft } from './draft'
import { sized } from './sized'

/** A small 12 V camping trailer of ten loads, for learning. Invented. Nothing switched by relay, one array, one shunt of each role. */
export function trailer(): Design {
  const d = new Draft(
    'demo-trailer',
    {
      name: 'Camping trailer, ten loads',
      customer: 'Mira Holloway (invented)',
      vehicle: 'Single-axle camping trailer',
      designer: 'R. Alder',
      installer: 'Alder & Wren Vehicle Electrics (invented)',
      contact: 'Telephone 555-0142\nworkshop@example.com',
      revision: 'A',
      date: '2026-02-10',
      systemV: 12,
      ruleSet: 'caravan-au-nz',
      ambientC: 40,
      coldestC: -5,
      notes: 'Start here: one battery, one array, one block, ten loads.',
    },
    5,
  )
  d.part('battery', 'G1', 'House battery', 'tool box', {
    chemistry: 'lfp',
    volts: '12',
    capacityAh: 100,
    dischargeA: 100,
    chargeA: 50,
    internalMOhm: 15,
  })
    .part('fuse-cartridge', 'F1', 'Battery fuse', 'tool box', {
      ratingA: 80,
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
    .part('isolator', 'Q1', 'Isolator', 'tool box', { ratingA: 150, voltageV: 32 })
    .part('fuse-block', 'F2', 'Loads block', 'galley', {
      class: 'c',
      voltageV: 32,
      breakingKA: 1,
      breakingV: 32,
      ratingA: 100,
      ways: [
        { ratingA: 10, label: 'Fridge' },
        { ratingA: 10, label: 'Water pump' },
        { ratingA: 3, label: 'Galley light' },
        { ratingA: 3, label: 'Annexe light' },
        { ratingA: 3, label: 'Reading light' },
        { ratingA: 10, label: 'Galley socket' },
        { ratingA: 10, label: 'Bed socket' },
        { ratingA: 3, label: 'Roof fan' },
        { ratingA: 10, label: 'Diesel heater' },
        { ratingA: 3, label: 'Tank gauge' },
        { ratingA: 25, label: 'Solar' },
        { ratingA: 3, label: 'Monitor' },
        { ratingA: null, label: 'Spare' },
      ],
    })
    .part('shunt', 'B1', 'Battery shunt', 'tool box', {
      role: 'battery',
      ratingA: 300,
      millivolts: 50,
      dataPlug: '8p8c',
    })
    .part('busbar', 'W1', 'Source negative bar', 'tool box', {
      studs: 4,
      pole: 'negative',
      ratingA: 150,
      stud: 'M8',
    })
    .part('shunt', 'B2', 'Load-side shunt', 'tool box', {
      role: 'load',
      ratingA: 150,
      millivolts: 50,
      dataPlug: '8p8c',
    })
    .part('busbar', 'W2', 'Load return bar', 'galley', {
      studs: 12,
      pole: 'negative',
      ratingA: 100,
      stud: 'M6',
    })
  d.run('G1.+', 'F1.1', '35mm2', 0.15)
  d.run('F1.2', 'Q1.1', '35mm2', 0.4)
  d.run('Q1.2', 'F2.in', '35mm2', 1.8)
  d.back('G1.-', 'B1.b', '35mm2', 0.4)
  d.back('B1.s', 'W1.1l', '35mm2', 0.3)
  d.back('W1.1r', 'B2.b', '35mm2', 0.3)
  d.back('B2.s', 'W2.1l', '35mm2', 1.6)

  const loads = [
    ['fridge', 'E1', 'Fridge', 'galley', 5, '4mm2', 3.2],
    ['pump', 'M1', 'Water pump', 'draw bar', 6, '4mm2', 2.6],
    ['lamp', 'E2', 'Galley light', 'galley', 1, '1.5mm2', 2.1],
    ['lamp', 'E3', 'Annexe light', 'side wall', 1.5, '1.5mm2', 3.8],
    ['lamp', 'E4', 'Reading light', 'bed', 0.5, '1.5mm2', 4.4],
    ['socket', 'X1', 'Galley socket', 'galley', 5, '4mm2', 2],
    ['socket', 'X2', 'Bed socket', 'bed', 5, '4mm2', 4.2],
    ['fan', 'M2', 'Roof fan', 'roof', 2, '1.5mm2', 4.5],
    ['load', 'E5', 'Diesel heater', 'under bed', 8, '4mm2', 3.4],
    ['load', 'E6', 'Tank gauge', 'galley', 0.2, '1.5mm2', 1.6],
  ] as const
  loads.forEach(([kind, designation, name, location, currentA, size, lengthM], i) => {
    const start = ['fridge', 'pump', 'fan'].includes(kind) ? { inrush: 2, inrushS: 0.3 } : {}
    d.part(kind, designation, name, location, { currentA, ...start })
    d.pair([`F2.${i + 1}`, `${designation}.+`], [`${designation}.-`, `W2.${i + 2}r`], size, lengthM)
  })

  d.part('pv-array', 'G2', 'Roof array', 'roof', {
    series: 1,
    parallel: 2,
    vocV: 22.8,
    iscA: 6.4,
    vmpV: 19.1,
    impA: 6,
    moduleW: 115,
    vocPerKelvin: -0.31,
    maxFuseA: 15,
  }).part('solar-controller', 'T1', 'Solar controller', 'tool box', {
    method: 'mppt',
    outputA: 20,
    pvMaxV: 75,
    pvMaxA: 20,
    data: 'wired',
    dataPlug: '8p8c',
  })
  d.pair(['G2.+', 'T1.pv+'], ['G2.-', 'T1.pv-'], '4mm2', 4)
  d.pair(['T1.bat+', 'F2.11'], ['T1.bat-', 'W1.2l'], '10mm2', 1.8)

  d.part('monitor-hub', 'K1', 'Monitor', 'galley', {
    dataPorts: 3,
    tankInputs: 1,
    temperatureInputs: 1,
    dataPlug: '8p8c',
    supplyA: 0.3,
  }).part('tank-sender', 'B3', 'Fresh water', 'under floor', { contents: 'fresh', capacityL: 80 })
  d.pair(['F2.12', 'K1.+'], ['K1.-', 'W2.12l'], '1.5mm2', 0.8)
  d.data('B1.data', 'K1.data1', 1.8)
    .data('B2.data', 'K1.data2', 1.8)
    .data('T1.data', 'K1.data3', 1.9)
    .data('B3.signal', 'K1.tank1', 2.5)
  return sized(d.build())
}
