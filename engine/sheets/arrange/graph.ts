import type { ArrangeLink, ArrangePart } from './part'

/** Parts and links by index. */
export interface Plan {
  readonly parts: readonly ArrangePart[]
  readonly links: readonly PlanLink[]
  /** Links at each part. */
  readonly at: readonly (readonly PlanLink[])[]
}

export interface PlanLink {
  readonly from: number
  readonly to: number
  /** Height of the terminals below the top of their parts, mm. */
  readonly fromY: number
  readonly toY: number
  readonly weight: number
}

/** Links to unknown parts or ports are a misuse and throw; a link from a part to itself does not steer anything. */
export function planOf(parts: readonly ArrangePart[], links: readonly ArrangeLink[]): Plan {
  const index = new Map(parts.map((p, i) => [p.id, i]))
  const end = ({ part, port }: ArrangeLink['from']): [index: number, y: number] => {
    const i = index.get(part)
    const at = i === undefined ? undefined : parts[i]!.ports.find((p) => p.id === port)
    if (i === undefined || !at) throw new RangeError(`No port ${port} on a part ${part}`)
    return [i, at.y]
  }
  const found = links.map((l) => {
    const [from, fromY] = end(l.from)
    const [to, toY] = end(l.to)
    return { from, to, fromY, toY, weight: l.weight ?? 1 }
  })
  const at: PlanLink[][] = parts.map(() => [])
  for (const l of found) {
    if (l.from === l.to) continue
    at[l.from]!.push(l)
    at[l.to]!.push(l)
  }
  return { parts, links: found.filter((l) => l.from !== l.to), at }
}

export const otherEnd = (l: PlanLink, part: number): number => (l.from === part ? l.to : l.from)

/** Height of the link's terminal on this part, and on the other. */
export const ownY = (l: PlanLink, part: number): number => (l.from === part ? l.fromY : l.toY)
export const otherY = (l: PlanLink, part: number): number => (l.from === part ? l.toY : l.fromY)
