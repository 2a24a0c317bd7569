import { parse } from '../model/parse'
import { foundWords, type Path, type Problem, ProblemList } from '../model/problems'
import { isRecord, type RawRecord } from '../model/record'
import type { NetworkBranch, NetworkDevice } from './form'
import type { MeterStatement, NetworkFile } from './networkfile'
import type { Operation } from './operation'
import * as want from './readfields'

export type NetworkReadResult = { readonly network: NetworkFile } | { readonly problems: readonly Problem[] }

const BRANCH = new Map([
  ['id', want.name],
  ['from', want.name],
  ['to', want.name],
  ['resistance', want.above0],
  ['kind', want.oneOf('conductor', 'fuse', 'contact', 'shunt')],
  ['rating', want.maybe(want.above0)],
  ['ampacity', want.maybe(want.above0)],
])
const DEVICE = new Map([
  ['id', want.name],
  ['positive', want.name],
  ['negative', want.name],
  ['min', want.atMost0],
  ['max', want.atLeast0],
  ['sustainedFault', want.atLeast0],
  ['emf', want.maybe(want.above0)],
  ['internalResistance', want.maybe(want.above0)],
])
const OPERATING = new Map([
  ['device', want.name],
  ['amps', want.maybe(want.figure)],
  ['watts', want.maybe(want.figure)],
  ['ohms', want.maybe(want.above0)],
  ['input', want.maybe(want.name)],
  ['efficiency', want.maybe(want.share)],
])
const METER = new Map([
  ['shunt', want.name],
  ['role', want.maybe(want.oneOf('battery', 'load'))],
  ['members', want.maybe(want.names)],
])
const CELSIUS = want.between(-60, 200)
const LISTS = ['nodes', 'branches', 'devices']
const KEYS = [...LISTS, 'operating', 'meters', 'conductorCelsius']

/**
 * Text of a network file to the network form, or everything that is wrong with it. Never throws, repairs nothing:
 * a network with one part guessed gives answers that look right. Linear in the text.
 */
export function readNetwork(text: string): NetworkReadResult {
  const problems = new ProblemList()
  const data = parse(text, problems, 'a network file')
  if (data !== undefined) {
    const network = read(data, problems)
    if (network && problems.all().length === 0) return { network }
  }
  return { problems: problems.all() }
}

function read(data: unknown, problems: ProblemList): NetworkFile | null {
  if (!isRecord(data)) {
    problems.add([], `a record with ${LISTS.join(', ')}`, foundWords(data))
    return null
  }
  for (const key of Object.keys(data))
    if (!KEYS.includes(key)) problems.add([key], `no key but ${KEYS.join(', ')}`, 'another key')
  const list = (key: string): readonly unknown[] => {
    const value = data[key]
    if (Array.isArray(value)) return value
    if (value !== undefined || LISTS.includes(key)) problems.add([key], 'a list', foundWords(value))
    return []
  }
  const records = (key: string, fields: ReadonlyMap<string, want.Wanted>): readonly RawRecord[] =>
    list(key).filter((x, i): x is RawRecord => want.fits(fields, x, [key, i], problems))

  const nodes = list('nodes')
  nodes.forEach((id, i) => {
    if (!want.name.fits(id)) problems.add(['nodes', i], want.name.words, foundWords(id))
  })
  const branches = records('branches', BRANCH) as unknown as readonly NetworkBranch[]
  const devices = records('devices', DEVICE) as unknown as readonly NetworkDevice[]
  const operating = records('operating', OPERATING) as unknown as readonly ({ device: string } & Operation)[]
  const meters = records('meters', METER) as unknown as readonly MeterStatement[]
  const celsius = data.conductorCelsius
  if (celsius !== undefined && !CELSIUS.fits(celsius))
    problems.add(['conductorCelsius'], CELSIUS.words, foundWords(celsius))
  if (problems.all().length > 0) return null

  const network = { nodes, branches, devices } as NetworkFile
  checkNames(network, problems)
  checkOperating(operating, network, problems)
  checkMeters(meters, network, problems)
  return {
    ...network,
    ...(operating.length > 0 ? { operating } : {}),
    ...(meters.length > 0 ? { meters } : {}),
    ...(celsius === undefined ? {} : { conductorCelsius: celsius as number }),
  }
}

/** Names once each, and every end a node. */
function checkNames({ nodes, branches, devices }: NetworkFile, problems: ProblemList): void {
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
function checkOperating(
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

function checkMeters(
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
