import type { Design } from '../../../engine/model/design'
import type { Values } from '../../../engine/model/fields'
import { Draft } from './draft'
import { sized } from './sized'

/**
 * The main demo: a mobile veterinary van. Invented. Two batteries with room for a third, three solar arrays on three
 * controllers, a charger from the alternator, an inverter-charger, three tiers of fuse blocks, a battery shunt and a
 * load-side shunt, relays worked by panel switches, and more data leads than the hub has ports.
 */
export const vetVan = (): Design => sized(vetVanAsDrawn())

/** The same with sizes as a careful hand would choose them, before the tool has had its say. */
export function vetVanAsDrawn(): Design {
  const d = new Draft(
    'demo-vet-van',
    {
      name: 'Mobile veterinary van',
      customer: 'Fernhill Animal Care (invented)',
      vehicle: 'Long-wheelbase panel van, high roof',
      designer: 'R. Alder',
      installer: 'Alder & Wren Vehicle Electrics (invented)',
      contact: 'Telephone 555-0142\nworkshop@example.com',
      revision: 'C',
      date: '2026-03-04',
      systemV: 12,
      ruleSet: 'metric-automotive',
      ambientC: 30,
      coldestC: -10,
      notes: 'Room is left for a third battery on W1, W2 and in the battery bay.',
    },
    11,
  )
  stores(d)
  chargers(d)
  loads(d)
  rear(d)
  readings(d)
  mains(d)
  return d.build()
}

const BAY = 'battery bay'
const WALL = 'power wall'
const ROOF = 'roof'
const BONNET = 'engine bay'

/** Figures as from data sheets, invented: two points of the curve of the cartridges, blade fuses of high breaking capacity. */
const CARTRIDGE = {
  class: 't',
  voltageV: 125,
  breakingKA: 20,
  breakingV: 125,
  fullDuty: true,
  holdsTimes: 2.5,
  holdsS: 6,
  clearsTimes: 3,
  clearsS: 4,
}
const STRIP = { class: 'sf51', voltageV: 32, breakingKA: 5, breakingV: 32 }
const BLADES = { class: 'c', voltageV: 32, breakingKA: 4, breakingV: 32 }
/** How loads of a kind start, where it is not as usual. */
const START: Readonly<Record<string, Values>> = {
  pump: { inrush: 2, inrushS: 0.3 },
  motor: { inrush: 2, inrushS: 0.3 },
}
/** A way kept free for a further load. */
const SPARE = { ratingA: null, label: 'Spare' }

function stores(d: Draft): void {
  const battery = {
    chemistry: 'lfp',
    volts: '12',
    capacityAh: 200,
    dischargeA: 150,
    chargeA: 100,
    internalMOhm: 9,
    massKg: 22,
  }
  d.part('battery', 'G1', 'House battery 1', BAY, battery)
    .part('battery', 'G2', 'House battery 2', BAY, battery)
    .part('fuse-cartridge', 'F1', 'Battery 1 fuse', BAY, { ratingA: 150, ...CARTRIDGE })
    .part('fuse-cartridge', 'F2', 'Battery 2 fuse', BAY, { ratingA: 150, ...CARTRIDGE })
    .part('busbar', 'W1', 'Battery positive bar', BAY, {
      studs: 4,
      pole: 'positive',
      ratingA: 500,
      stud: 'M10',
    })
    .part('busbar', 'W2', 'Battery negative bar', BAY, {
      studs: 4,
      pole: 'negative',
      ratingA: 500,
      stud: 'M10',
    })
    .part('isolator', 'Q1', 'Main isolator', BAY, { ratingA: 300, voltageV: 48 })
    .part('shunt', 'B1', 'Battery shunt', BAY, {
      role: 'battery',
      ratingA: 500,
      millivolts: 50,
      dataPlug: '8p8c',
    })
    .part('busbar', 'W3', 'Source negative bar', WALL, {
      studs: 8,
      pole: 'negative',
      ratingA: 500,
      stud: 'M10',
    })
    .part('shunt', 'B2', 'Load-side shunt', WALL, {
      role: 'load',
      ratingA: 300,
      millivolts: 50,
      dataPlug: '8p8c',
    })
    .part('busbar', 'W4', 'Load return bar', WALL, { studs: 20, pole: 'negative', ratingA: 250, stud: 'M6' })
    .part('fuse-bar', 'F3', 'Main distribution', WALL, {
      ...STRIP,
      feeds: 2,
      ratingA: 500,
      wayMaxA: 300,
      ways: [
        { ratingA: 225, label: 'Inverter' },
        { ratingA: 100, label: 'Loads' },
        { ratingA: 150, label: 'Charging' },
        { ratingA: 50, label: 'Always on' },
        { ratingA: 60, label: 'Rear' },
        SPARE,
      ],
    })
  d.run('G1.+', 'F1.1', '70mm2', 0.15)
  d.run('G2.+', 'F2.1', '70mm2', 0.15)
  d.run('F1.2', 'W1.1l', '120mm2', 0.4)
  d.run('F2.2', 'W1.2l', '120mm2', 0.4)
  d.run('W1.1r', 'Q1.1', '120mm2', 0.3)
  d.run('Q1.2', 'F3.in1', '120mm2', 0.5)
  d.back('G1.-', 'W2.1l', '70mm2', 0.55)
  d.back('G2.-', 'W2.2l', '70mm2', 0.55)
  d.back('W2.1r', 'B1.b', '120mm2', 0.3)
  d.back('B1.s', 'W3.1l', '120mm2', 0.5)
  d.back('W3.1r', 'B2.b', '50mm2', 0.3)
  d.back('B2.s', 'W4.1l', '50mm2', 0.3)
}

function chargers(d: Draft): void {
  d.part('fuse-bar', 'F4', 'Charging block', WALL, {
    ...STRIP,
    feeds: 1,
    ratingA: 200,
    wayMaxA: 100,
    ways: [
      { ratingA: 30, label: 'Solar front' },
      { ratingA: 50, label: 'Solar rear' },
      { ratingA: 30, label: 'Solar awning' },
      { ratingA: 40, label: 'Alternator charger' },
      SPARE,
    ],
  })
  d.run('F3.3', 'F4.in', '35mm2', 0.4)

  const module = {
    vocV: 24.3,
    iscA: 9.8,
    vmpV: 20.4,
    impA: 9.3,
    moduleW: 190,
    vocPerKelvin: -0.29,
    maxFuseA: 20,
  }
  d.part('pv-array', 'G5', 'Front roof array', ROOF, { ...module, series: 2, parallel: 1 })
    .part('pv-array', 'G6', 'Rear roof array', ROOF, { ...module, series: 2, parallel: 2 })
    .part('pv-array', 'G7', 'Awning array', 'awning', { ...module, series: 1, parallel: 2 })
  const breaker = { class: 'magnetic', voltageV: 150, breakingKA: 6, breakingV: 150, fitting: 'clamp 16' }
  d.part('breaker', 'F11', 'Front array breaker', WALL, { ratingA: 16, ...breaker })
    .part('breaker', 'F12', 'Rear array breaker', WALL, { ratingA: 32, ...breaker })
    .part('breaker', 'F13', 'Awning array breaker', WALL, { ratingA: 32, ...breaker })
    .part('connector', 'X1', 'Awning socket', 'side wall', { poles: 2, ratingA: 40 })
  const controller = { method: 'mppt', pvMaxV: 100, pvMaxA: 35, data: 'wired', dataPlug: '8p8c' }
  d.part('solar-controller', 'T1', 'Solar controller front', WALL, { ...controller, outputA: 20 })
    .part('solar-controller', 'T2', 'Solar controller rear', WALL, { ...controller, outputA: 40 })
    .part('solar-controller', 'T3', 'Solar controller awning', WALL, { ...controller, outputA: 20 })

  const arrays = [
    {
      array: 'G5',
      breaker: 'F11',
      controller: 'T1',
      way: 1,
      stud: '2l',
      size: '6mm2',
      length: 4.2,
      out: '10mm2',
    },
    {
      array: 'G6',
      breaker: 'F12',
      controller: 'T2',
      way: 2,
      stud: '2r',
      size: '6mm2',
      length: 6.5,
      out: '16mm2',
    },
  ]
  for (const a of arrays) {
    const feed = d.run(`${a.array}.+`, `${a.breaker}.1`, a.size, a.length)
    d.run(`${a.breaker}.2`, `${a.controller}.pv+`, a.size, 0.4)
    d.back(`${a.array}.-`, `${a.controller}.pv-`, a.size, a.length + 0.4, { returnOf: feed })
    d.pair([`${a.controller}.bat+`, `F4.${a.way}`], [`${a.controller}.bat-`, `W3.${a.stud}`], a.out, 0.8)
  }
  const awning = d.run('G7.+', 'X1.1a', '6mm2', 5)
  d.back('G7.-', 'X1.2a', '6mm2', 5, { returnOf: awning })
  const inside = d.run('X1.1b', 'F13.1', '6mm2', 3.1)
  d.run('F13.2', 'T3.pv+', '6mm2', 0.4)
  d.back('X1.2b', 'T3.pv-', '6mm2', 3.5, { returnOf: inside })
  d.pair(['T3.bat+', 'F4.3'], ['T3.bat-', 'W3.3l'], '10mm2', 0.8)

  d.part('starting-battery', 'G3', 'Starting battery', BONNET, {
    chemistry: 'flooded',
    volts: '12',
    capacityAh: 95,
    dischargeA: 600,
    chargeA: 150,
    internalMOhm: 5,
  })
    .part('alternator', 'G4', 'Alternator', BONNET, { ratedA: 140, regulatedV: 14.2 })
    .part('fuse-bolt-in', 'F9', 'Alternator fuse', BONNET, { ratingA: 175, ...STRIP })
    .part('fuse-bolt-in', 'F10', 'Alternator charger fuse', BONNET, { ratingA: 60, ...STRIP })
    .part('alternator-charger', 'T4', 'Alternator charger', WALL, {
      outputA: 30,
      inputV: '12',
      inputLowestV: 12,
      efficiency: 92,
      fitting: 'clamp 35',
      data: 'wired',
      dataPlug: '8p8c',
    })
    .part('chassis-point', 'X2', 'Engine block', BONNET, { pathMOhm: 0.5 })
    .part('chassis-point', 'X3', 'Starting battery strap', BONNET, { pathMOhm: 0.5 })
    .part('chassis-point', 'X4', 'House bond', WALL, { pathMOhm: 1 })
  d.run('G4.+', 'F9.2', '50mm2', 0.7)
  d.run('G3.+', 'F9.1', '50mm2', 0.15)
  d.run('G3.+', 'F10.1', '16mm2', 0.15)
  d.run('F10.2', 'T4.in+', '16mm2', 5.6)
  d.back('G4.-', 'X2.31', '70mm2', 0.3)
  d.back('G3.-', 'X3.31', '70mm2', 0.4)
  d.back('X4.31', 'W3.4l', '70mm2', 0.6)
  d.pair(['T4.out+', 'F4.4'], ['T4.-', 'W3.3r'], '25mm2', 0.9)

  d.part('inverter-charger', 'T5', 'Inverter-charger', WALL, {
    powerW: 1600,
    efficiency: 90,
    lowestV: 10.5,
    chargeA: 60,
    inrush: 1.5,
    inrushS: 1,
    data: 'wired',
    dataPlug: '8p8c',
    idleW: 12,
  })
  d.pair(['F3.1', 'T5.+'], ['T5.-', 'W3.4r'], '70mm2', 1.1)
}

function loads(d: Draft): void {
  d.part('relay', 'K1', 'Loads master relay', WALL, { ratingA: 120, coilV: 12, coilA: 0.2 })
    .part('fuse-block', 'F5', 'Loads block', WALL, {
      ...BLADES,
      ratingA: 120,
      ways: [
        { ratingA: 7.5, label: 'Exam lamp' },
        { ratingA: 7.5, label: 'Ceiling light' },
        { ratingA: 10, label: 'Surgery lamp' },
        { ratingA: 15, label: 'Water pump' },
        { ratingA: 10, label: 'Waste pump' },
        { ratingA: 7.5, label: 'Roof fan' },
        { ratingA: 15, label: 'Heater' },
        { ratingA: 10, label: 'Desk socket' },
        { ratingA: 10, label: 'Bench socket' },
        { ratingA: 15, label: 'Centrifuge' },
        { ratingA: 25, label: 'Table lift' },
        { ratingA: 7.5, label: 'Work light' },
        SPARE,
      ],
    })
    .part('fuse-block', 'F6', 'Always-on block', WALL, {
      ...BLADES,
      ratingA: 60,
      ways: [
        { ratingA: 15, label: 'Vaccine fridge' },
        { ratingA: 3, label: 'Monitor hub' },
        { ratingA: 3, label: 'Display' },
        { ratingA: 3, label: 'Drug cabinet alarm' },
        { ratingA: 3, label: 'Loads master' },
        { ratingA: 3, label: 'Voltage sense' },
        SPARE,
      ],
    })
  d.run('F3.2', 'K1.30', '35mm2', 0.3)
  d.run('K1.87', 'F5.in', '35mm2', 0.3)
  d.run('F3.4', 'F6.in', '16mm2', 0.4)

  const simple = [
    ['lamp', 'E1', 'Exam lamp', 'treatment', 1, '2r', 3, '1.5mm2', 4.5],
    ['lamp', 'E2', 'Ceiling light', 'treatment', 2, '3r', 4, '1.5mm2', 5],
    ['lamp', 'E3', 'Surgery lamp', 'treatment', 3, '4r', 6, '2.5mm2', 4.8],
    ['fan', 'M3', 'Roof fan', 'treatment', 6, '7r', 3, '1.5mm2', 5.2],
    ['load', 'E4', 'Diesel heater', 'under bench', 7, '8r', 9, '2.5mm2', 3.8],
    ['socket', 'X11', 'Desk socket', 'desk', 8, '9r', 6, '2.5mm2', 4],
    ['socket', 'X12', 'Bench socket', 'treatment', 9, '10r', 6, '2.5mm2', 4.4],
    ['load', 'E5', 'Centrifuge', 'bench', 10, '11r', 8, '2.5mm2', 3.6],
    ['motor', 'M4', 'Table lift', 'treatment', 11, '12r', 12, '4mm2', 3.2],
    ['lamp', 'E6', 'Rear work light', 'rear door', 12, '13r', 4, '2.5mm2', 6.5],
  ] as const
  for (const [kind, designation, name, location, way, stud, currentA, size, lengthM] of simple)
    d.part(kind, designation, name, location, { currentA, ...START[kind] }).pair(
      [`F5.${way}`, `${designation}.+`],
      [`${designation}.-`, `W4.${stud}`],
      size,
      lengthM,
    )

  d.part('fridge', 'E7', 'Vaccine fridge', 'bench', {
    currentA: 6.5,
    service: 'critical',
    inrush: 2,
    inrushS: 0.5,
  })
    .part('load', 'E8', 'Drug cabinet alarm', 'desk', { currentA: 0.3 })
    .pair(['F6.1', 'E7.+'], ['E7.-', 'W4.14r'], '6mm2', 1.5)
    .pair(['F6.4', 'E8.+'], ['E8.-', 'W4.15r'], '1mm2', 3.5)

  d.part('panel-switch', 'S1', 'Loads master switch', 'entry panel', { ratingA: 6 })
  d.run('F6.5', 'S1.1', '1mm2', 2.4)
  d.run('S1.2', 'K1.86', '1mm2', 2.6)
  d.back('K1.85', 'W4.3l', '1mm2', 0.6)

  const pumps = [
    {
      relay: 'K2',
      load: 'M1',
      switch: 'S2',
      name: 'Water pump',
      way: 4,
      currentA: 8,
      studs: ['5r', '5l'],
      lengthM: 3.4,
    },
    {
      relay: 'K3',
      load: 'M2',
      switch: 'S3',
      name: 'Waste pump',
      way: 5,
      currentA: 4,
      studs: ['6r', '6l'],
      lengthM: 4.1,
    },
  ]
  for (const p of pumps) {
    d.part('relay', p.relay, `${p.name} relay`, WALL, { ratingA: 30, coilV: 12, coilA: 0.15 })
      .part('panel-switch', p.switch, `${p.name} switch`, 'sink', { ratingA: 6 })
      .part('pump', p.load, p.name, 'under bench', { currentA: p.currentA, ...START.pump })
    d.run(`F5.${p.way}`, `${p.relay}.30`, '2.5mm2', 0.5)
    d.pair([`${p.relay}.87`, `${p.load}.+`], [`${p.load}.-`, `W4.${p.studs[0]}`], '2.5mm2', p.lengthM)
    d.run(`${p.relay}.30`, `${p.switch}.1`, '2.5mm2', 3)
    d.run(`${p.switch}.2`, `${p.relay}.86`, '2.5mm2', 3)
    d.back(`${p.relay}.85`, `W4.${p.studs[1]}`, '2.5mm2', 0.6)
  }
}

/** The rear cabin hangs on a block of its own, with its own return bar. */
function rear(d: Draft): void {
  const fed = [
    ['lamp', 'E11', 'Kennel light', 2, '1.5mm2', 3],
    ['fan', 'M11', 'Kennel fan left', 2.5, '1.5mm2', 3.4],
    ['fan', 'M12', 'Kennel fan right', 2.5, '1.5mm2', 3.6],
    ['pump', 'M13', 'Wash pump', 6, '4mm2', 2.8],
    ['load', 'E12', 'Water heater control', 1.5, '1.5mm2', 2.2],
    ['motor', 'M14', 'Entry step', 10, '6mm2', 3],
    ['lamp', 'E13', 'Step light', 1, '1.5mm2', 3.2],
    ['socket', 'X13', 'Rear socket', 6, '4mm2', 2.6],
    ['load', 'E14', 'Scanner dock', 5, '2.5mm2', 2],
    ['lamp', 'E15', 'Awning light', 2, '1.5mm2', 4.5],
  ] as const
  const fuses = [5, 5, 5, 10, 3, 15, 3, 10, 7.5, 3]
  d.part('fuse-block', 'F7', 'Rear block', 'rear cabinet', {
    ...BLADES,
    returnBar: true,
    ratingA: 80,
    ways: [...fed.map(([, , label], i) => ({ ratingA: fuses[i]!, label })), SPARE],
  })
  d.pair(['F3.5', 'F7.in'], ['F7.return', 'W4.16r'], '25mm2', 4.4)
  fed.forEach(([kind, designation, name, currentA, size, lengthM], i) => {
    d.part(kind, designation, name, 'rear cabin', { currentA, ...START[kind] })
    d.pair([`F7.${i + 1}`, `${designation}.+`], [`${designation}.-`, `F7.r${i + 1}`], size, lengthM)
  })
}

function readings(d: Draft): void {
  d.part('monitor-hub', 'K10', 'Monitor hub', WALL, {
    dataPorts: 3,
    tankInputs: 2,
    temperatureInputs: 2,
    dataPlug: '8p8c',
    supplyA: 0.4,
  })
    .part('display', 'P1', 'Display', 'entry panel', { supplyA: 0.3, data: 'wired', dataPlug: '8p8c' })
    .part('data-expander', 'K11', 'Data expander 1', WALL, { ports: 4, dataPlug: '8p8c' })
    .part('data-expander', 'K12', 'Data expander 2', WALL, { ports: 4, dataPlug: '8p8c' })
    .part('tank-sender', 'B11', 'Fresh water', 'under floor', { contents: 'fresh', capacityL: 90 })
    .part('tank-sender', 'B12', 'Waste water', 'under floor', { contents: 'grey', capacityL: 60 })
    .part('temperature-sender', 'B13', 'Fridge temperature', 'bench', { of: 'Vaccine fridge' })
    .part('gas-sender', 'B14', 'Gas bottle', 'gas locker', { use: 'bottle', data: 'wireless' })
    .pair(['F6.2', 'K10.+'], ['K10.-', 'W4.17r'], '1mm2', 0.8)
    .pair(['F6.3', 'P1.+'], ['P1.-', 'W4.18r'], '1mm2', 2.4)
  d.run('F6.6', 'B1.sense-v', '1mm2', 1.4, { colour: 'VT' })
  d.data('P1.data', 'K10.data1', 2.4)
    .data('K11.up', 'K10.data2', 0.4)
    .data('K12.up', 'K10.data3', 0.4)
    .data('B1.data', 'K11.data1', 1.2)
    .data('B2.data', 'K11.data2', 0.8)
    .data('T4.data', 'K11.data3', 0.9)
    .data('T5.data', 'K11.data4', 1.1)
    .data('T1.data', 'K12.data1', 0.7)
    .data('T2.data', 'K12.data2', 0.7)
    .data('T3.data', 'K12.data3', 0.7)
    .data('B11.signal', 'K10.tank1', 3.5)
    .data('B12.signal', 'K10.tank2', 4.2)
    .data('B13.signal', 'K10.temp1', 3.1)
}

function mains(d: Draft): void {
  d.part('mains-inlet', 'X21', 'Shore inlet', 'side wall', { ratingA: 16 })
    .part('mains-distribution', 'A1', 'Mains distribution', 'licensed work', { inputs: 1, outputs: 2 })
    .part('mains-load', 'E21', 'Autoclave', 'bench', { powerW: 1200 })
    .part('mains-load', 'E22', 'Mains sockets', 'bench', { powerW: 1000 })
    .mains('X21.out', 'T5.mains-in', 3.5)
    .mains('T5.mains-out', 'A1.in1', 1.2)
    .mains('A1.out1', 'E21.in', 3)
    .mains('A1.out2', 'E22.in', 3)
}
