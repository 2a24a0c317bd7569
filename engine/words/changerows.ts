import type { Comparison, ItemChanges } from '../calc/compare/changes'
import { compareDesigns } from '../calc/compare/compare'
import type { Accepted, Design } from '../model/design'
import type { OwnConductor } from '../tables/ownsizes'
import { acceptedFact, conductorFact, OTHER, ownConductorFact, ownRuleFact, sheetFact } from './changefields'
import { conductorIs, factLines, type Pair, partIs, partLines, settingLines } from './changelines'
import type { ChangeGroup, ChangeKind, ChangeRow } from './changerow'
import { partName } from './names'

type Places = Partial<Pick<ChangeRow, 'parts' | 'conductors' | 'onSheet'>>

type Things<T> = Pick<ChangeRow, 'group'> & {
  readonly list: string
  readonly of: (design: Design) => readonly T[] | undefined
  readonly idOf: (thing: T) => string
  readonly name: (thing: T, design: Design) => string
  readonly is: (thing: T, design: Design) => readonly string[]
  readonly lines: (
    thing: T,
    fields: ItemChanges['changed'][number]['fields'],
    pair: Pair,
  ) => readonly string[]
  readonly places?: (thing: T) => Places
}

/** Everything that differs between two states, in words, in the order of the later one. Pure; linear. */
export function changeRows(
  before: Design,
  after: Design,
  comparison: Comparison = compareDesigns(before, after),
  findingOf: (key: string) => string = (key) => `Finding ${key.split(' ')[0]}`,
): readonly ChangeRow[] {
  const pair = { before, after }
  const fields = (group: ChangeGroup, name: string, lines: readonly string[]): ChangeRow[] =>
    lines.map((line, i) => row(group, 'changed', `${group} ${i}`, name, [line]))
  return [
    ...thingRows(comparison.parts, pair, {
      group: 'parts',
      list: 'part',
      of: (d) => d.parts,
      idOf: ({ id }) => id,
      name: ({ id }, d) => partName(d, id),
      is: partIs,
      lines: partLines,
      places: ({ id }) => ({ parts: [id] }),
    }),
    ...thingRows(comparison.conductors, pair, {
      group: 'conductors',
      list: 'conductor',
      of: (d) => d.conductors,
      idOf: ({ id }) => id,
      name: ({ number }) => number,
      is: conductorIs,
      lines: (_, changes, p) => factLines(changes, conductorFact, p),
      places: ({ id }) => ({ conductors: [id] }),
    }),
    ...fields('settings', 'Design', settingLines(comparison.settings, pair)),
    ...comparison.other.map(({ path: [key] }) =>
      row('settings', 'changed', `other ${key}`, OTHER[String(key)] ?? `“${key}” of the file`, ['changed']),
    ),
    ...fields('rules', 'Own rules', factLines(comparison.ownRules, ownRuleFact, pair)),
    ...thingRows<OwnConductor>(comparison.ownConductors, pair, {
      group: 'rules',
      list: 'own conductor',
      of: (d) => d.ownConductors,
      idOf: ({ key }) => key,
      name: ({ name }) => name,
      is: ({ sectionMm2 }) => [`Copper ${sectionMm2} mm²`],
      lines: (_, changes, p) => factLines(changes, ownConductorFact, p),
    }),
    ...thingRows(comparison.zones, pair, {
      group: 'sheet',
      list: 'outline',
      of: (d) => d.zones,
      idOf: ({ id }) => id,
      name: ({ name }) => `Outline “${name}”`,
      is: ({ parts }, d) =>
        parts.length === 0 ? [] : [`Round ${parts.map((id) => partName(d, id)).join(', ')}`],
      lines: (_, changes, p) => factLines(changes, sheetFact, p),
      places: ({ id, parts }) => ({ parts, onSheet: [id] }),
    }),
    ...thingRows(comparison.texts, pair, {
      group: 'sheet',
      list: 'text',
      of: (d) => d.texts,
      idOf: ({ id }) => id,
      name: ({ text }) => `Text “${short(text)}”`,
      is: () => [],
      lines: (_, changes, p) => factLines(changes, sheetFact, p),
      places: ({ id }) => ({ onSheet: [id] }),
    }),
    ...thingRows<Accepted>(comparison.accepted, pair, {
      group: 'accepted',
      list: 'accepted',
      of: (d) => d.accepted,
      idOf: ({ key }) => key,
      name: ({ key }) => findingOf(key),
      is: ({ reason, by }) => [`“${reason}”${by ? `, ${by}` : ''}`],
      lines: (_, changes, p) => factLines(changes, acceptedFact, p),
      places: ({ key }) => placesIn(key, after),
    }),
  ]
}

const short = (text: string): string => {
  const line = text.split('\n')[0]!.trim()
  return line.length > 40 ? `${line.slice(0, 40).trimEnd()}…` : line
}

/** The subjects of a finding stand in its key. */
function placesIn(key: string, { parts, conductors }: Design): Places {
  const words = new Set(key.split(/[ /]/))
  return {
    parts: parts.map((p) => p.id).filter((id) => words.has(id)),
    conductors: conductors.map((c) => c.id).filter((id) => words.has(id)),
  }
}

const row = (
  group: ChangeGroup,
  what: ChangeKind,
  key: string,
  name: string,
  lines: readonly string[],
  places: Places = {},
): ChangeRow => ({ group, what, key, name, lines, parts: [], conductors: [], onSheet: [], ...places })

function thingRows<T>(changes: ItemChanges, pair: Pair, words: Things<T>): ChangeRow[] {
  const { group, list, of, idOf, name, is, lines, places } = words
  const [was, now] = [pair.before, pair.after].map((d) => new Map((of(d) ?? []).map((t) => [idOf(t), t])))
  const one = (what: ChangeKind, id: string, thing: T, said: readonly string[], as = group): ChangeRow =>
    row(
      as,
      what,
      `${what} ${list} ${id}`,
      name(thing, what === 'removed' ? pair.before : pair.after),
      said,
      places?.(thing),
    )
  const changed = new Map(changes.changed.map((c) => [c.id, c.fields]))
  return [
    ...changes.added.map((id) => one('added', id, now!.get(id)!, is(now!.get(id)!, pair.after))),
    ...changes.removed.map((id) => one('removed', id, was!.get(id)!, is(was!.get(id)!, pair.before))),
    ...[...changed].map(([id, fields]) =>
      one('changed', id, now!.get(id)!, lines(now!.get(id)!, fields, pair)),
    ),
    ...changes.moved
      .filter((id) => !changed.has(id))
      .map((id) => one('moved', id, now!.get(id)!, [], 'moved')),
  ]
}
