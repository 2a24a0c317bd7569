import type { HandoverFacts } from '../../../calc/handover/facts'
import type { Chemistry } from '../../../calc/handover/stores'
import type { Part } from '../../../model/design'
import type { Piece } from '../book'
import type { Say } from '../say'
import { idleDays } from './lasting'
import { offBefore } from './plugs'

const list = (items: readonly string[]): Piece => ({ is: 'list', items })

const chemistries = ({ stores }: HandoverFacts): Chemistry[] => [
  ...new Set(stores.flatMap((s) => (s.isStarting || s.chemistry === null ? [] : [s.chemistry]))),
]

const ofKind = ({ design }: HandoverFacts, ...kinds: readonly string[]): Part[] =>
  design.parts.filter((p) => kinds.includes(p.kind))

/** Living with the system. */
export function everydayPieces(facts: HandoverFacts, say: Say): Piece[] {
  const { w, part, short } = say
  const e = w.everyday
  const told = (parts: readonly Part[], words: (names: string) => string): string[] =>
    parts.length > 0 ? [words(say.list(parts.map(part)))] : []
  const master = [...facts.switches]
    .filter(({ handle, off }) => handle.is === 'hand' && handle.part.kind !== 'isolator' && off.length > 1)
    .sort((a, b) => b.off.length - a.off.length)[0]
  const off = new Set(master?.off.map((t) => t.part.id))
  const on = facts.finds.filter((f) => f.works && f.thing.role === 'load' && !off.has(f.thing.part.id))
  return [
    list([
      e.look,
      ...chemistries(facts).map((c) => e.keep[c]),
      ...told(ofKind(facts, 'solar-controller'), e.sun),
      ...told(ofKind(facts, 'alternator-charger'), e.engine),
      ...told(ofKind(facts, 'mains-charger', 'inverter-charger'), e.mains),
      ...told(ofKind(facts, 'inverter', 'inverter-charger'), e.inverter),
      ...(master ? [e.leaving(say.at(master.handle.part))] : []),
      ...(master && on.length > 0 ? [e.stayOn(say.list(on.map((f) => short(f.thing.part))))] : []),
      ...told(ofKind(facts, 'low-voltage-cut-out'), e.cutOut),
      ...told(ofKind(facts, 'connector'), e.plugs),
      ...facts.switches.flatMap(({ handle }) => {
        const before = handle.is === 'plug' ? offBefore(facts, handle) : null
        return before ? [e.plugAfter(part(handle.part), say.at(before.part))] : []
      }),
    ]),
    { is: 'text', text: e.maker },
  ]
}

/** Laying up. */
export function storagePieces(facts: HandoverFacts, say: Say): Piece[] {
  const { w, at, part, figure } = say
  const s = w.storage
  const { batteries, mains, sunFed } = facts.isolation
  const starting = facts.stores.flatMap((x) => (x.isStarting ? [x.part] : []))
  const days = idleDays(facts)
  return [
    { is: 'text', text: w.chapters.storage.lead },
    {
      is: 'list',
      numbered: true,
      items: [
        ...chemistries(facts).map((c) => s.charge[c]),
        s.stop,
        ...(mains.length > 0 ? [s.mains(say.list(mains.map(at)))] : []),
        ...(sunFed.length > 0 ? [s.cover(say.list(sunFed.map(part)))] : []),
        batteries.length > 0 ? offInOrder(facts, say) : s.cannot,
        ...(days === null
          ? []
          : [`${s.drain(figure(Math.floor(days), ''))}${batteries.length > 0 ? ` ${s.offDraws}` : ''}`]),
        ...chemistries(facts).map((c) => s.again[c]),
        ...(starting.length > 0 ? [s.starting(say.list(starting.map(part)))] : []),
        ...(ofKind(facts, 'pump').length > 0 ? [s.frost] : []),
        s.back,
      ],
    },
    { is: 'text', text: w.everyday.maker },
  ]
}

/** What takes all off, the solar side first. */
const handlesOff = ({ isolation: { arrays, batteries } }: HandoverFacts): Part[] =>
  [...arrays, ...batteries].map((h) => h.part)

function offInOrder(facts: HandoverFacts, { w, at, list: listed }: Say): string {
  const [only, ...others] = handlesOff(facts)
  return only && others.length === 0
    ? w.emergency.battery(at(only))
    : w.storage.switchOff(listed(handlesOff(facts).map(at)))
}

/** What needs care, and when. */
export function carePieces(facts: HandoverFacts, say: Say): Piece[] {
  const { w, part, figure } = say
  const c = w.care
  const names = (parts: readonly Part[]): string => say.list(parts.map(part))
  const exercised = handlesOff(facts)
  const breakers = ofKind(facts, 'breaker').filter((p) => !exercised.includes(p))
  const gas = ofKind(facts, 'gas-sender')
  const hasMains = facts.design.parts.some((p) =>
    [
      'mains-inlet',
      'mains-distribution',
      'mains-load',
      'inverter',
      'inverter-charger',
      'mains-charger',
    ].includes(p.kind),
  )
  return [
    { is: 'heading', text: c.firstDrives },
    list([c.terminals]),
    { is: 'heading', text: c.monthly },
    list([
      c.look,
      ...(chemistries(facts).includes('flooded') ? [c.level] : []),
      ...(ofKind(facts, 'pv-array').length > 0 ? [c.modules] : []),
      ...(exercised.length > 1 ? [c.inOrder(names(exercised))] : []),
      ...(exercised.length === 1 ? [c.alone(names(exercised))] : []),
      ...(exercised.length > 0 && facts.isolation.sunFed.length > 0 ? [c.dark] : []),
      ...(breakers.length > 0 ? [c.breakers(names(breakers))] : []),
      ...(gas.length > 0 ? [c.senders(names(gas))] : []),
      ...spares(facts, figure, c.spares),
    ]),
    { is: 'heading', text: c.yearly },
    list([...c.skilled, ...(hasMains ? [c.mains] : [])]),
    { is: 'text', text: c.practice },
  ]
}

/** Every rating of the plug-in fuses that are fitted, smallest first. */
function spares(
  { finds }: HandoverFacts,
  figure: Say['figure'],
  words: (ratings: string) => string,
): string[] {
  const amps = finds.flatMap(({ fuses }) =>
    fuses.flatMap(({ fuse }) =>
      ['fuse-block', 'fuse-blade', 'fuse-large-blade'].includes(fuse.part.kind) && fuse.ratingA !== null
        ? [fuse.ratingA]
        : [],
    ),
  )
  const ratings = [...new Set(amps)].sort((a, b) => a - b).map((a) => figure(a, 'A'))
  return ratings.length > 0 ? [words(ratings.join(', '))] : []
}
