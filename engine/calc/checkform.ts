import { foundWords, type Path, type ProblemList } from '../model/problems'
import type { MeterStatement, NetworkFile } from './networkfile'
import type { Operation } from './operation'

/** Names once each, and every end a node. */
export function checkNames({ nodes, branches, devices }: NetworkFile, problems: ProblemList): void {
  const known = unique(nodes, (i) => ['nodes', i], problems)
  unique(
    branches.map((b) => b.id),
    (i) => ['branches', i, 'id'],
    problems,
  )
  unique(
    devices.map((d) => d.id),
    (i) => ['devices', i, 'id'],
    problems,
  )
  const end = (id: string, path: Path): void => {
    if (!known.has(id)) problems.add(path, 'the name of a node', foundWords(id))
  }
  branches.forEach((b, i) => {
    end(b.from, ['branches', i, 'from'])
    end(b.to, ['branches', i, 'to'])
  })
  devices.forEach((d, i) => {
    end(d.positive, ['devices', i, 'positive'])
    end(d.negative, ['devices', i, 'negative'])
  })
}

/** One figure for each device stated; a converter's input is stated by its output alone, and by one output. */
export function checkOperating(
  operating: readonly ({ device: string } & Operation)[],
  { devices }: NetworkFile,
  problems: ProblemList,
): void {
  const known = new Set(devices.map((d) => d.id))
  const stated = unique(
    operating.map((o) => o.device),
    (i) => ['operating', i, 'device'],
    problems,
  )
  const inputs = new Set<string>()
  operating.forEach((o, i) => {
    const path: Path = ['operating', i]
    if (!known.has(o.device)) problems.add([...path, 'device'], 'the name of a device', foundWords(o.device))
    const given = ['amps', 'watts', 'ohms'].filter((key) => Object.hasOwn(o, key))
    if (given.length !== 1)
      problems.add(path, 'one of amps, watts, ohms', given.length === 0 ? 'none' : given.join(' and '))
    if (o.input === undefined) {
      if (o.efficiency !== undefined)
        problems.add([...path, 'efficiency'], 'no efficiency without an input', foundWords(o.efficiency))
      return
    }
    if (given[0] === 'ohms') problems.add([...path, 'input'], 'no input of a resistance', foundWords(o.input))
    if (!known.has(o.input) || stated.has(o.input) || inputs.has(o.input))
      problems.add(
        [...path, 'input'],
        'the name of a device that stands nowhere else under "operating"',
        foundWords(o.input),
      )
    inputs.add(o.input)
  })
}

/** Meters on shunts, each once, serving devices. */
export function checkMeters(
  meters: readonly MeterStatement[],
  { branches, devices }: NetworkFile,
  problems: ProblemList,
): void {
  const shunts = new Set(branches.filter((b) => b.kind === 'shunt').map((b) => b.id))
  const known = new Set(devices.map((d) => d.id))
  unique(
    meters.map((m) => m.shunt),
    (i) => ['meters', i, 'shunt'],
    problems,
  )
  meters.forEach((m, i) => {
    if (!shunts.has(m.shunt))
      problems.add(['meters', i, 'shunt'], 'the name of a branch of kind shunt', foundWords(m.shunt))
    m.members?.forEach((id, j) => {
      if (!known.has(id)) problems.add(['meters', i, 'members', j], 'the name of a device', foundWords(id))
    })
  })
}

function unique(ids: readonly string[], path: (i: number) => Path, problems: ProblemList): Set<string> {
  const seen = new Set<string>()
  ids.forEach((id, i) => {
    if (seen.has(id)) problems.add(path(i), 'a name that stands nowhere else in its list', foundWords(id))
    seen.add(id)
  })
  return seen
}
