import { analyse } from '../../../engine/index'
import type { Design } from '../../../engine/model/design'
import { Board } from './board'
import { Draft } from './draft'

/**
 * Training boards. Invented. Thirty-three small circuits on the wall of a workshop, each a system of its own with one thing wrong,
 * so that an apprentice sees one finding at a time: what is planted on one board does not change the others.
 */
export function boards(): Design {
  const d = new Draft(
    'demo-boards',
    {
      name: 'Training boards, one mistake on each',
      customer: 'For apprentices of the workshop (invented)',
      vehicle: 'No vehicle: boards on a wall',
      designer: 'R. Alder',
      installer: 'Alder & Wren Vehicle Electrics (invented)',
      contact: 'Telephone 555-0142\nworkshop@example.com',
      revision: 'A',
      date: '2026-05-06',
      systemV: 12,
      ruleSet: 'us-33cfr183',
      ambientC: 30,
      coldestC: 0,
      notes: 'Each board is a circuit of its own. One thing is wrong on each: the findings say what.',
    },
    1,
  )
  for (const [i, board] of BOARDS.entries()) board.build(new Board(d, i + 1))
  return withShortRunsAccepted(d.build())
}

/** Every battery lead is a short run ahead of its fuse: a note that is looked at once and for all. */
function withShortRunsAccepted(design: Design): Design {
  const accepted = analyse(design)
    .findings.filter((f) => f.rule === 'P4')
    .map(({ key, level }) => ({
      key,
      level,
      reason: 'Battery leads of the boards are fixed to the wall, 0.15 m long and sleeved.',
      by: 'R. Alder',
      date: '2026-05-06',
    }))
  return { ...design, accepted }
}

/** One board: what is wrong on it, and the rule that says so. */
interface BoardSource {
  readonly what: string
  readonly rule: string
  readonly build: (b: Board) => void
}

export const BOARDS: readonly BoardSource[] = [
  {
    what: 'the return of the level sender is taken from its signal',
    rule: 'J5',
    build: (b) => {
      const { f } = b.sound()
      const s = b.part('tank-sender', 'B', 'Level', { contents: 'fresh', capacityL: 20 })
      b.run(`${f}.2`, `${s}.signal`, '16awg', 0.6)
    },
  },
  {
    what: 'a jumper lies across the lamp',
    rule: 'J1',
    build: (b) => {
      const { e } = b.sound()
      b.run(`${e}.+`, `${e}.-`, '14awg', 0.2)
    },
  },
  {
    what: 'the lamp is the wrong way round',
    rule: 'J7',
    build: (b) => {
      const [g, f, e] = [b.battery(), b.fuse(10), b.lamp(4)]
      b.run(`${g}.+`, `${f}.1`, '10awg', 0.15)
      const feed = b.run(`${f}.2`, `${e}.-`, '14awg', 1)
      b.back(`${e}.+`, `${g}.-`, '14awg', 1, { returnOf: feed })
    },
  },
  {
    what: 'two batteries in a ring',
    rule: 'J3',
    build: (b) => {
      const { g, f } = b.sound()
      const h = b.battery()
      const f2 = b.fuse(10)
      b.run(`${h}.-`, `${f2}.1`, '10awg', 0.15)
      b.run(`${f2}.2`, `${f}.2`, '14awg', 0.3)
      b.back(`${h}.+`, `${g}.-`, '14awg', 0.5)
    },
  },
  {
    what: 'the fuse is 60 A before a thin feed',
    rule: 'P2',
    build: (b) => {
      b.sound({ fuseA: 40, size: '16awg' })
    },
  },
  {
    what: 'two fuses feed one conductor that lies in a bunch of seven',
    rule: 'P3',
    build: (b) => {
      const { g, f } = b.sound({
        fuseA: 30,
        size: '10awg',
        words: { bunched: 7 },
        backWords: {},
        battery: { internalMOhm: 4 },
        fuse: { breakingKA: 5 },
      })
      const f2 = b.fuse(30, { breakingKA: 5 })
      b.run(`${g}.+`, `${f2}.1`, '10awg', 0.15)
      b.run(`${f2}.2`, `${f}.2`, '10awg', 0.2)
    },
  },
  {
    what: 'a slow breaker before a thin feed',
    rule: 'K2',
    build: (b) => {
      b.sound({
        battery: { internalMOhm: 4 },
        fuseA: 20,
        fuse: { class: 'other', breakingKA: 5, holdsTimes: 2, holdsS: 10, clearsTimes: 8, clearsS: 4 },
      })
    },
  },
  {
    what: 'two feeds side by side, one three times as long',
    rule: 'C4',
    build: (b) => {
      const { f, e } = b.sound({ size: '10awg', lampA: 8 })
      b.run(`${f}.2`, `${e}.+`, '10awg', 3)
    },
  },
  {
    what: 'a bar of 20 A for 30 A',
    rule: 'B1',
    build: (b) => {
      const [g, f] = [b.battery(), b.fuse(30)]
      const w = b.part('busbar', 'W', 'Bar', { studs: 4, pole: 'positive', ratingA: 20, stud: 'M6' })
      b.run(`${g}.+`, `${f}.1`, '10awg', 0.15)
      b.run(`${f}.2`, `${w}.1l`, '10awg', 0.3)
      for (const i of [2, 3]) {
        const e = b.lamp(11)
        const feed = b.run(`${w}.${i}r`, `${e}.+`, '10awg', 1)
        b.back(`${e}.-`, `${g}.-`, '10awg', 1, { returnOf: feed })
      }
    },
  },
  {
    what: 'a fuse of 5 A for a lamp of 8 A',
    rule: 'F1',
    build: (b) => {
      b.sound({ fuseA: 5, lampA: 8 })
    },
  },
  {
    what: 'a feed of 14 m, too thin for its length',
    rule: 'E1',
    build: (b) => {
      b.sound({ lengthM: 14, lampA: 6 })
    },
  },
  {
    what: 'the shunt is wired the wrong way round',
    rule: 'M4',
    build: (b) => {
      const [g, f, e] = [b.battery(), b.fuse(10), b.lamp(4)]
      const s = b.part('shunt', 'B', 'Battery shunt', { role: 'battery', ratingA: 100, millivolts: 50 })
      b.run(`${g}.+`, `${f}.1`, '10awg', 0.15)
      const feed = b.run(`${f}.2`, `${e}.+`, '14awg', 1)
      b.back(`${e}.-`, `${s}.b`, '14awg', 1, { returnOf: feed })
      b.back(`${s}.s`, `${g}.-`, '10awg', 0.3)
    },
  },
  {
    what: 'one battery stands on the wrong side of the shunt',
    rule: 'M5',
    build: (b) => {
      const { f, e } = b.shunted({}, { dischargeA: 8, chargeA: 8 })
      const h = b.battery({ dischargeA: 8, chargeA: 8 })
      const f2 = b.fuse(10)
      b.run(`${h}.+`, `${f2}.1`, '10awg', 0.15)
      b.run(`${f2}.2`, `${f}.2`, '14awg', 0.3)
      b.back(`${h}.-`, `${e}.-`, '14awg', 0.4)
    },
  },
  {
    what: 'a lamp returns to the battery past the shunt',
    rule: 'M6',
    build: (b) => {
      const { g, f } = b.shunted()
      const e = b.lamp(2)
      const feed = b.run(`${f}.2`, `${e}.+`, '14awg', 0.8)
      b.back(`${e}.-`, `${g}.-`, '14awg', 0.8, { returnOf: feed })
    },
  },
  {
    what: 'nothing passes the shunt',
    rule: 'M8',
    build: (b) => {
      const { g } = b.sound()
      const s = b.part('shunt', 'B', 'Battery shunt', { role: 'battery', ratingA: 100, millivolts: 50 })
      b.back(`${s}.b`, `${g}.-`, '10awg', 0.3)
    },
  },
  {
    what: 'a shunt of 5 A for a lamp of 4 A',
    rule: 'M7',
    build: (b) => {
      b.shunted({ ratingA: 5 })
    },
  },
  {
    what: 'the lamp returns through the shunt and through the frame',
    rule: 'M3',
    build: (b) => {
      const { g, e } = b.shunted({ role: 'load' })
      const x1 = b.part('chassis-point', 'X', 'Frame at the lamp', {})
      const x2 = b.part('chassis-point', 'X', 'Frame at the battery', {})
      b.back(`${e}.-`, `${x1}.31`, '14awg', 0.3)
      b.back(`${x2}.31`, `${g}.-`, '4awg', 0.3)
    },
  },
  {
    what: 'five lugs on one post',
    rule: 'J4',
    build: (b) => {
      const { g } = b.sound()
      const w = b.part('busbar', 'W', 'Return bar', { studs: 6, pole: 'negative', ratingA: 100, stud: 'M6' })
      b.back(`${w}.1l`, `${g}.-`, '10awg', 0.3)
      for (let i = 0; i < 4; i++) {
        const f = b.fuse(5)
        const e = b.lamp(1)
        b.run(`${g}.+`, `${f}.1`, '10awg', 0.15)
        const feed = b.run(`${f}.2`, `${e}.+`, '14awg', 1)
        b.back(`${e}.-`, `${w}.${i + 2}r`, '14awg', 1, { returnOf: feed })
      }
    },
  },
  {
    what: 'a feed and a return of 18 AWG, open laid',
    rule: 'C3',
    build: (b) => {
      b.sound({ fuseA: 3, lampA: 0.5, size: '18awg' })
    },
  },
  {
    what: 'the bond to the frame is thin',
    rule: 'J10',
    build: (b) => {
      const [g, f, e] = [b.battery(), b.fuse(10), b.lamp(4)]
      const x = b.part('chassis-point', 'X', 'Frame', {})
      const w = b.part('busbar', 'W', 'Return bar', { studs: 4, pole: 'negative', ratingA: 100, stud: 'M6' })
      b.run(`${g}.+`, `${f}.1`, '10awg', 0.15)
      const feed = b.run(`${f}.2`, `${e}.+`, '14awg', 1)
      b.back(`${e}.-`, `${w}.1r`, '14awg', 1, { returnOf: feed })
      b.back(`${w}.1l`, `${g}.-`, '4awg', 0.3)
      b.back(`${w}.2l`, `${x}.31`, '12awg', 0.3)
    },
  },
  {
    what: 'a lamp has no return',
    rule: 'J2',
    build: (b) => {
      const { f } = b.sound()
      const e = b.lamp(2)
      b.run(`${f}.2`, `${e}.+`, '14awg', 0.8)
    },
  },
  {
    what: 'a lamp has no feed',
    rule: 'J6',
    build: (b) => {
      const { g } = b.sound()
      const [e, w] = [
        b.lamp(2),
        b.part('busbar', 'W', 'Bar', { studs: 4, pole: 'positive', ratingA: 20, stud: 'M6' }),
      ]
      const feed = b.run(`${w}.1r`, `${e}.+`, '14awg', 0.8)
      b.back(`${e}.-`, `${g}.-`, '14awg', 0.8, { returnOf: feed })
    },
  },
  {
    what: 'the battery states no limit',
    rule: 'C2',
    build: (b) => {
      {
        const { g } = b.sound({ battery: { dischargeA: null, chargeA: null } })
        const h = b.battery({ dischargeA: null, chargeA: null })
        b.run(`${h}.+`, `${g}.+`, '4awg', 0.2)
        b.back(`${h}.-`, `${g}.-`, '4awg', 0.2)
      }
    },
  },
  {
    what: 'the battery states no resistance',
    rule: 'K4',
    build: (b) => {
      b.sound({ battery: { internalMOhm: null, capacityAh: 20, chemistry: 'lfp' } })
    },
  },
  {
    what: 'the isolator states no rating',
    rule: 'D2',
    build: (b) => {
      const [g, f, e] = [b.battery(), b.fuse(10), b.lamp(4)]
      const q = b.part('isolator', 'Q', 'Isolator', { ratingA: null, voltageV: 32 })
      b.run(`${g}.+`, `${f}.1`, '10awg', 0.15)
      b.run(`${f}.2`, `${q}.1`, '14awg', 0.3)
      const feed = b.run(`${q}.2`, `${e}.+`, '14awg', 1)
      b.back(`${e}.-`, `${g}.-`, '14awg', 1, { returnOf: feed })
    },
  },
  {
    what: 'a lamp of 24 W behind a converter to 5 V',
    rule: 'D5',
    build: (b) => {
      const [g, f] = [b.battery(), b.fuse(10)]
      const t = b.part('step-down', 'T', 'Converter', {
        outputA: 3,
        outputV: 5,
        efficiency: 90,
        isolated: false,
      })
      const e = b.part('lamp', 'E', 'Lamp', { powerW: 10 })
      b.run(`${g}.+`, `${f}.1`, '10awg', 0.15)
      b.run(`${f}.2`, `${t}.in+`, '14awg', 0.5)
      b.back(`${t}.-`, `${g}.-`, '14awg', 0.6)
      const feed = b.run(`${t}.out+`, `${e}.+`, '14awg', 1)
      b.back(`${e}.-`, `${t}.-`, '14awg', 1, { returnOf: feed })
    },
  },
  {
    what: 'insulation for 50 °C',
    rule: 'D3',
    build: (b) => {
      b.sound({ words: { insulationC: 45 } })
    },
  },
  {
    what: 'a conductor that ends where it began',
    rule: 'J8',
    build: (b) => {
      const { f } = b.sound()
      const w = b.part('busbar', 'W', 'Bar', { studs: 4, pole: 'positive', ratingA: 50, stud: 'M6' })
      b.run(`${f}.2`, `${w}.1l`, '14awg', 0.3)
      b.run(`${w}.2l`, `${w}.3l`, '14awg', 0.3)
    },
  },
  {
    what: 'no way is left',
    rule: 'F6',
    build: (b) => {
      const [g, f] = [b.battery(), b.fuse(30)]
      const k = b.part('fuse-block', 'F', 'Block', {
        class: 'c',
        voltageV: 32,
        breakingKA: 2,
        breakingV: 32,
        ratingA: 50,
        ways: [
          { ratingA: 5, label: 'Lamp' },
          { ratingA: 5, label: 'Lamp' },
        ],
      })
      b.run(`${g}.+`, `${f}.1`, '10awg', 0.15)
      b.run(`${f}.2`, `${k}.in`, '10awg', 0.3)
      for (const i of [1, 2]) {
        const e = b.lamp(1)
        const feed = b.run(`${k}.${i}`, `${e}.+`, '14awg', 1)
        b.back(`${e}.-`, `${g}.-`, '14awg', 1, { returnOf: feed })
      }
    },
  },
  {
    what: 'a lamp of another battery returns through the shunt of this one',
    rule: 'M9',
    build: (b) => {
      const { g, e } = b.shunted()
      const g2 = b.part('starting-battery', 'G', 'Starting battery', {
        capacityAh: 60,
        dischargeA: 300,
        chargeA: 60,
        internalMOhm: 8,
      })
      const [f2, e2] = [b.fuse(10, { breakingKA: 5 }), b.lamp(3)]
      b.run(`${g2}.+`, `${f2}.1`, '10awg', 0.15)
      b.run(`${f2}.2`, `${e2}.+`, '14awg', 1)
      b.back(`${e2}.-`, `${e}.-`, '14awg', 0.6)
      b.back(`${g2}.-`, `${g}.-`, '10awg', 0.3)
    },
  },
  {
    what: 'a lamp of 14 A on 16 AWG in a bunch of seven',
    rule: 'C1',
    build: (b) => {
      b.sound({
        fuseA: 15,
        lampA: 14,
        size: '16awg',
        lengthM: 0.5,
        lamp: { continuous: false },
        words: { bunched: 7 },
      })
    },
  },
  {
    what: 'the array is joined to the battery without a controller',
    rule: 'V6',
    build: (b) => {
      const { g, f } = b.sound()
      const a = b.part('pv-array', 'G', 'Array', {
        vocV: 22,
        iscA: 3.2,
        vmpV: 18.5,
        impA: 3,
        vocPerKelvin: -0.3,
        maxFuseA: 10,
      })
      b.run(`${a}.+`, `${f}.2`, '14awg', 1)
      b.back(`${a}.-`, `${g}.-`, '14awg', 1)
    },
  },
  {
    what: 'the charger is set for batteries of 24 V',
    rule: 'R7',
    build: (b) => {
      const { g, f } = b.sound()
      const t = b.part('mains-charger', 'T', 'Charger', { outputA: 4, absorptionV: 28.8, data: 'none' })
      b.run(`${t}.+`, `${f}.2`, '14awg', 1)
      b.back(`${t}.-`, `${g}.-`, '14awg', 1)
    },
  },
]
