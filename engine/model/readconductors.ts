import type { Conductor, Part, PartId, TerminalRef } from './design'
import type { Values } from './fields'
import type { KindLookup } from './kind'
import type { Path, ProblemList } from './problems'
import { readRecord } from './record'
import { conductorSchema } from './schema'
import { TakenNames } from './takennames'
import { complete } from './values'

/** Faults that change no figure of a conductor. Any other fault takes the conductor out. */
const HARMLESS = ['colour', 'remark', 'path']

/**
 * Reads conductors one by one. One that is damaged, has an id twice, or ends where nothing is, is left out. A number
 * given twice is renewed; a return whose feed is gone stands by itself.
 */
export function readConductors(
  list: readonly unknown[],
  parts: readonly Part[],
  kindOf: KindLookup,
  problems: ProblemList,
): Conductor[] {
  const conductors: Conductor[] = []
  const places = new Map<string, number>()
  const numbers = new TakenNames()
  const ends = endsOf(parts, kindOf)
  for (const [i, data] of list.entries()) {
    const path: Path = ['conductors', i]
    const read = readRecord(conductorSchema, data, path, problems, (key) => HARMLESS.includes(key))
    if (!read) continue
    if (places.has(read.id)) {
      problems.add([...path, 'id'], 'an id of its own', `"${read.id}" once more; this conductor is left out`)
      continue
    }
    if (!ends(read.from, [...path, 'from'], problems) || !ends(read.to, [...path, 'to'], problems)) continue
    const number = numbers.take(read.number)
    if (number !== read.number)
      problems.add([...path, 'number'], 'a number of its own', `"${read.number}" once more; now ${number}`)
    places.set(read.id, i)
    conductors.push({ ...read, number })
  }
  return conductors.map((c) => {
    if (c.returnOf === null || (c.returnOf !== c.id && places.has(c.returnOf))) return c
    problems.add(
      ['conductors', places.get(c.id)!, 'returnOf'],
      'the id of its feed',
      `"${c.returnOf}", which is no other conductor here`,
    )
    return { ...c, returnOf: null }
  })
}

/** Says whether an end is on a terminal that exists; a part of unknown kind is taken to have every terminal. */
function endsOf(parts: readonly Part[], kindOf: KindLookup) {
  const terminals = new Map<PartId, ReadonlySet<string> | null>()
  for (const part of parts) terminals.set(part.id, terminalKeys(part.kind, part.values, kindOf))
  return (end: TerminalRef, path: Path, problems: ProblemList): boolean => {
    const keys = terminals.get(end.part)
    if (keys === undefined) {
      problems.add(
        [...path, 'part'],
        'the id of a part that was read',
        `"${end.part}"; this conductor is left out`,
      )
      return false
    }
    if (keys === null || keys.has(end.terminal)) return true
    problems.add(
      [...path, 'terminal'],
      `a terminal of ${end.part}`,
      `"${end.terminal}"; this conductor is left out`,
    )
    return false
  }
}

function terminalKeys(kindKey: string, values: Values, kindOf: KindLookup): ReadonlySet<string> | null {
  const kind = kindOf(kindKey)
  return kind ? new Set(kind.terminals(complete(kind.fields, values)).map((t) => t.key)) : null
}
