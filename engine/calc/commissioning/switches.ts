import type { Plan, PlannedContact } from '../operating/plan'

/**
 * Contacts that have to be closed for a device to be fed, by device id: those on the only way from a battery, or from
 * an output that holds a voltage, and those that feed the coils of the relays among them. O(contacts · network) a device.
 */
export function switchesFor(plan: Plan): (device: string) => ReadonlySet<string> {
  const known = new Map<string, ReadonlySet<string>>()
  const find = (device: string, asked: ReadonlySet<string>): ReadonlySet<string> => {
    const before = known.get(device)
    if (before) return before
    const needed = new Set<string>()
    if (asked.has(device)) return needed
    for (const contact of onlyWays(plan, device)) {
      needed.add(contact.id)
      const w = contact.workedBy
      if (w?.by !== 'coil' || w.closed !== 'fed') continue
      for (const id of find(`${contact.part}/${w.coil}`, new Set([...asked, device]))) needed.add(id)
    }
    for (const input of inputsOf(plan, device))
      for (const id of find(input, new Set([...asked, device]))) needed.add(id)
    if (asked.size === 0) known.set(device, needed)
    return needed
  }
  return (device) => find(device, new Set())
}

/** Contacts without which one pole of a device reaches no supply. */
function onlyWays(plan: Plan, device: string): PlannedContact[] {
  const { all, devices, contacts } = plan
  const d = all.deviceIndex.get(device)
  if (d === undefined) return []
  const supplies = devices.flatMap((x, i) => (x.is === 'battery' || x.is === 'held' ? [i] : []))
  const poles = [
    { from: all.positive[d]!, goals: new Set(supplies.map((i) => all.positive[i]!)) },
    { from: all.negative[d]!, goals: new Set(supplies.map((i) => all.negative[i]!)) },
  ].filter(({ from, goals }) => reaches(plan, from, goals, -1))
  return contacts.filter(({ id }) => {
    const e = all.branchIndex.get(id)
    return e !== undefined && poles.some(({ from, goals }) => !reaches(plan, from, goals, e))
  })
}

/** Inputs of the converters that hold the voltage of the circuit in which a device stands. */
function inputsOf({ all, devices }: Plan, device: string): string[] {
  const d = all.deviceIndex.get(device)
  if (d === undefined) return []
  const net = all.net[all.positive[d]!]
  if (devices.some((x, i) => x.is === 'battery' && all.net[all.positive[i]!] === net)) return []
  return devices.flatMap((x, i) =>
    x.is === 'held' && x.input !== -1 && all.net[all.positive[i]!] === net ? [devices[x.input]!.id] : [],
  )
}

function reaches(
  { all: { graph } }: Plan,
  from: number,
  goals: ReadonlySet<number>,
  without: number,
): boolean {
  const seen = new Uint8Array(graph.vertexCount)
  const open = [from]
  seen[from] = 1
  for (let v = open.pop(); v !== undefined; v = open.pop()) {
    if (goals.has(v)) return true
    for (let i = graph.start[v]!; i < graph.start[v + 1]!; i++) {
      if (graph.edge[i] === without || seen[graph.far[i]!]) continue
      seen[graph.far[i]!] = 1
      open.push(graph.far[i]!)
    }
  }
  return false
}
