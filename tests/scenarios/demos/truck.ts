import type { Design } from '../../../engine/model/design'
import { Draft } from './draft'
import { sized } from './sized'

/**
 * A 24 V expedition truck. Invented. Three batteries in parallel, each behind its own fuse, feed a ring of three positive
 * bars: a link can be taken out and everything still runs, and every link must bear what then goes through it.
 */
export function truck(): Design {
  const d = new Draft(
    'demo-truck',
    {
      name: 'Expedition truck, 24 V, ring of bars',
      customer: 'Northing Survey (invented)',
      vehicle: 'Two-axle all-wheel-drive truck, box body',
      designer: 'R. Alder',
      installer: 'Alder & Wren Vehicle Electrics (invented)',
      contact: 'Telephone 555-0142\nworkshop@example.com',
      revision: 'B',
      date: '2026-01-22',
      systemV: 24,
      ruleSet: 'metric-automotive',
      ambientC: 30,
      coldestC: -25,
      notes:
        'Each link of the ring carries an isolator: a bar can be worked on while the other two stay live.',
    },
    11,
  )
  const battery = {
    chemistry: 'lfp',
    volts: '24',
    capacityAh: 150,
    dischargeA: 80,
    chargeA: 75,
    internalMOhm: 15,
  }
  // Figures as from data sheets, invented: two points of the curve of the cartridges, fuses of high breaking capacity.
  const cartridge = {
    class: 't',
    voltageV: 125,
    breakingKA: 20,
    breakingV: 125,
    fullDuty: true,
    holdsTimes: 2.5,
    holdsS: 6,
    clearsTimes: 3.5,
    clearsS: 3,
  }
  const strip = { class: 'sf51', voltageV: 32, breakingKA: 10, breakingV: 32 }
  const spare = { ratingA: null, label: 'Spare' }
  d.part('busbar', 'W1', 'Bar, front', 'power cabinet', {
    studs: 6,
    pole: 'positive',
    ratingA: 400,
    stud: 'M10',
  })
    .part('busbar', 'W2', 'Bar, middle', 'power cabinet', {
      studs: 6,
      pole: 'positive',
      ratingA: 400,
      stud: 'M10',
    })
    .part('busbar', 'W3', 'Bar, rear', 'power cabinet', {
      studs: 6,
      pole: 'positive',
      ratingA: 400,
      stud: 'M10',
    })
    .part('busbar', 'W4', 'Battery negative bar', 'power cabinet', {
      studs: 6,
      pole: 'negative',
      ratingA: 500,
      stud: 'M10',
    })
    .part('shunt', 'B1', 'Battery shunt', 'power cabinet', {
      role: 'battery',
      ratingA: 500,
      millivolts: 50,
      dataPlug: '8p8c',
    })
    .part('busbar', 'W5', 'Source negative bar', 'power cabinet', {
      studs: 8,
      pole: 'negative',
      ratingA: 500,
      stud: 'M10',
    })
    .part('shunt', 'B2', 'Load-side shunt', 'power cabinet', {
      role: 'load',
      ratingA: 300,
      millivolts: 50,
      dataPlug: '8p8c',
    })
    .part('busbar', 'W6', 'Load return bar', 'power cabinet', {
      studs: 12,
      pole: 'negative',
      ratingA: 250,
      stud: 'M8',
    })
  for (const i of [1, 2, 3]) {
    d.part('battery', `G${i}`, `Battery ${i}`, 'battery box', battery).part(
      'fuse-cartridge',
      `F${i}`,
      `Battery ${i} fuse`,
      'battery box',
      { ratingA: 80, ...cartridge },
    )
    d.run(`G${i}.+`, `F${i}.1`, '70mm2', 0.18)
    d.run(`F${i}.2`, `W${i}.1l`, '120mm2', 1.1)
    d.back(`G${i}.-`, `W4.${i}l`, '70mm2', 1.2)
  }
  const links = [
    ['Q1', 'Link front to middle', 'W1.2r', 'W2.2l'],
    ['Q2', 'Link middle to rear', 'W2.2r', 'W3.2l'],
    ['Q3', 'Link rear to front', 'W3.2r', 'W1.2l'],
  ] as const
  for (const [designation, name, from, to] of links) {
    d.part('isolator', designation, name, 'power cabinet', { ratingA: 300, voltageV: 48 })
    d.run(from, `${designation}.1`, '120mm2', 0.5)
    d.run(`${designation}.2`, to, '120mm2', 0.5)
  }
  d.back('W4.1r', 'B1.b', '120mm2', 0.3)
  d.back('B1.s', 'W5.1l', '120mm2', 0.4)
  d.back('W5.1r', 'B2.b', '70mm2', 0.3)
  d.back('B2.s', 'W6.1l', '70mm2', 0.4)

  d.part('fuse-block', 'F10', 'Box body block', 'box body', {
    class: 'c',
    voltageV: 32,
    breakingKA: 5,
    breakingV: 32,
    ratingA: 100,
    ways: [
      { ratingA: 10, label: 'Lighting left' },
      { ratingA: 10, label: 'Lighting right' },
      { ratingA: 10, label: 'Fridge' },
      { ratingA: 10, label: 'Freezer' },
      { ratingA: 10, label: 'Water pump' },
      { ratingA: 7.5, label: 'Heater' },
      { ratingA: 5, label: 'Extractor' },
      { ratingA: 3, label: 'Monitor' },
      spare,
    ],
  }).part('fuse-bolt-in', 'F11', 'Box body fuse', 'power cabinet', {
    ratingA: 60,
    ...strip,
  })
  d.run('W1.3r', 'F11.1', '120mm2', 0.15)
  d.run('F11.2', 'F10.in', '16mm2', 3.2)
  const loads = [
    ['lamp', 'E1', 'Lighting left', 4, '2.5mm2', 6.2],
    ['lamp', 'E2', 'Lighting right', 4, '2.5mm2', 6.8],
    ['fridge', 'E3', 'Fridge', 3, '2.5mm2', 4],
    ['fridge', 'E4', 'Freezer', 4, '2.5mm2', 4.4],
    ['pump', 'M1', 'Water pump', 5, '2.5mm2', 3.2],
    ['load', 'E5', 'Diesel heater', 4, '2.5mm2', 5],
    ['fan', 'M2', 'Extractor', 2, '1.5mm2', 5.5],
  ] as const
  loads.forEach(([kind, designation, name, currentA, size, lengthM], i) => {
    const start = ['fridge', 'pump'].includes(kind) ? { inrush: 2, inrushS: 0.3 } : {}
    d.part(kind, designation, name, 'box body', { currentA, ...start })
    d.pair([`F10.${i + 1}`, `${designation}.+`], [`${designation}.-`, `W6.${i + 2}r`], size, lengthM)
  })

  d.part('fuse-bolt-in', 'F12', 'Crane fuse', 'power cabinet', {
    ratingA: 80,
    ...strip,
  }).part('motor', 'M3', 'Recovery crane', 'rear', {
    currentA: 70,
    inrush: 2,
    inrushS: 0.3,
    continuous: false,
  })
  d.run('W3.3r', 'F12.1', '120mm2', 0.15)
  d.pair(['F12.2', 'M3.+'], ['M3.-', 'W6.9r'], '35mm2', 6)

  d.part('fuse-bolt-in', 'F13', 'Inverter-charger fuse', 'power cabinet', {
    ratingA: 175,
    ...strip,
  }).part('inverter-charger', 'T1', 'Inverter-charger', 'power cabinet', {
    powerW: 2500,
    efficiency: 91,
    lowestV: 21,
    chargeA: 50,
    inrush: 1.3,
    inrushS: 1,
    data: 'wired',
    dataPlug: '8p8c',
  })
  d.run('W2.3r', 'F13.1', '120mm2', 0.15)
  d.pair(['F13.2', 'T1.+'], ['T1.-', 'W5.2l'], '70mm2', 1.2)

  d.part('pv-array', 'G4', 'Roof array', 'roof', {
    series: 2,
    parallel: 3,
    vocV: 41.2,
    iscA: 10.4,
    vmpV: 34.3,
    impA: 9.8,
    moduleW: 335,
    vocPerKelvin: -0.28,
    maxFuseA: 25,
  })
    .part('solar-controller', 'T2', 'Solar controller', 'power cabinet', {
      method: 'mppt',
      outputA: 50,
      fitting: 'clamp 35',
      pvMaxV: 150,
      pvMaxA: 50,
      data: 'wired',
      dataPlug: '8p8c',
    })
    .part('breaker', 'F14', 'Array breaker', 'power cabinet', {
      ratingA: 50,
      class: 'magnetic',
      voltageV: 150,
      breakingKA: 6,
      breakingV: 150,
    })
    .part('fuse-bolt-in', 'F15', 'Solar output fuse', 'power cabinet', {
      ratingA: 70,
      ...strip,
    })
  const array = d.run('G4.+', 'F14.1', '10mm2', 7)
  d.run('F14.2', 'T2.pv+', '10mm2', 0.5)
  d.back('G4.-', 'T2.pv-', '10mm2', 7.5, { returnOf: array })
  const solar = d.run('T2.bat+', 'F15.1', '25mm2', 0.6)
  d.run('F15.2', 'W2.4r', '120mm2', 0.15)
  d.back('T2.bat-', 'W5.2r', '25mm2', 0.8, { returnOf: solar })

  d.part('step-down', 'T3', '24 to 12 V converter', 'power cabinet', {
    outputA: 20,
    outputV: 12,
    efficiency: 92,
    isolated: false,
  })
    .part('fuse-bolt-in', 'F16', 'Converter fuse', 'power cabinet', {
      ratingA: 30,
      ...strip,
    })
    .part('fuse-block', 'F17', '12 V block', 'cab', {
      class: 'c',
      voltageV: 32,
      breakingKA: 1,
      breakingV: 32,
      ratingA: 60,
      returnBar: true,
      ways: [{ ratingA: 10, label: 'Radio' }, { ratingA: 10, label: 'Cab sockets' }, spare],
    })
    .part('load', 'E11', 'Two-way radio', 'cab', { currentA: 6 })
    .part('socket', 'X11', 'Cab sockets', 'cab', { currentA: 8 })
  d.run('W3.4r', 'F16.1', '120mm2', 0.15)
  d.run('F16.2', 'T3.in+', '6mm2', 1)
  d.back('T3.-', 'W6.10r', '10mm2', 1)
  const twelve = d.run('T3.out+', 'F17.in', '10mm2', 5)
  d.back('F17.return', 'W6.11r', '10mm2', 5, { returnOf: twelve })
  d.pair(['F17.1', 'E11.+'], ['E11.-', 'F17.r1'], '2.5mm2', 1.5)
  d.pair(['F17.2', 'X11.+'], ['X11.-', 'F17.r2'], '2.5mm2', 1.8)

  d.part('monitor-hub', 'K1', 'Monitor hub', 'power cabinet', {
    dataPorts: 4,
    tankInputs: 2,
    temperatureInputs: 1,
    dataPlug: '8p8c',
    supplyA: 0.3,
  })
    .part('tank-sender', 'B3', 'Fresh water', 'box body', { contents: 'fresh', capacityL: 220 })
    .part('tank-sender', 'B4', 'Diesel', 'frame', { contents: 'fuel', capacityL: 300 })
  d.pair(['F10.8', 'K1.+'], ['K1.-', 'W6.12r'], '1mm2', 3)
  d.data('B1.data', 'K1.data1', 0.8)
    .data('B2.data', 'K1.data2', 0.8)
    .data('T1.data', 'K1.data3', 1)
    .data('T2.data', 'K1.data4', 1)
  d.data('B3.signal', 'K1.tank1', 5).data('B4.signal', 'K1.tank2', 6)
  return sized(d.build())
}
