import { parse } from '../model/parse'
import { foundWords, type Problem, ProblemList } from '../model/problems'
import { isRecord, type RawRecord } from '../model/record'
import { checkMeters, checkNames, checkOperating } from './checkform'
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
 * a network with one part guessed gives answers that look right. A byte order mark is passed over. Linear in the text.
 */
export function readNetwork(text: string): NetworkReadResult {
  const problems = new ProblemList()
  const data = parse(text.startsWith('\uFEFF') ? text.slice(1) : text, problems, 'a network file')
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
