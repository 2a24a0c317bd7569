import type { Conductor, Design } from '../model/design'
import { sizeIn } from '../model/sizes'
import type { SquareMillimetres } from '../units'
import type { Border } from './network'

/** 8 AWG: NFPA 70 article 552, battery to frame. */
const LEAST_MM2: SquareMillimetres = 8.366

/** A conductor that bonds the frame to a battery's negative, and what it must have: as much copper as the thickest lead. */
export interface Bond {
  readonly bond: Conductor
  readonly lead: Conductor
  readonly leastMm2: SquareMillimetres
}

/** Every bond of a design that has a battery behind it. O(bonds × branches). */
export function bondsOf(design: Design, border: Border): Bond[] {
  const section = ({ size }: Conductor): SquareMillimetres => sizeIn(design, size)?.sectionMm2 ?? 0
  return [...border.conductors.values()].flatMap((bond) => {
    const frameEnds = [bond.from, bond.to].filter((t) => border.frames.some((f) => f.part === t.part))
    if (frameEnds.length !== 1) return []
    const start = [bond.from, bond.to].find((t) => t !== frameEnds[0])!
    const leads = leadsBehind(border, bond, `${start.part}/${start.terminal}`)
    if (leads.length === 0 || leads.includes(bond)) return []
    const lead = leads.reduce((a, b) => (section(b) > section(a) ? b : a))
    return [{ bond, lead, leastMm2: Math.max(LEAST_MM2, section(lead)) }]
  })
}

/** Conductors at the negative posts of the batteries that are reached from a terminal without the bond and the frame. */
function leadsBehind(border: Border, bond: Conductor, terminal: string): Conductor[] {
  const nextTo = new Map<string, string[]>()
  const link = (a: string, b: string): void => {
    nextTo.set(a, [...(nextTo.get(a) ?? []), b])
  }
  for (const b of border.form.branches) {
    if (b.id === bond.id || b.id.endsWith('/frame')) continue
    link(b.from, b.to)
    link(b.to, b.from)
  }
  const reached = new Set([border.nodeOf.get(terminal) ?? terminal])
  for (const node of reached) for (const next of nextTo.get(node) ?? []) reached.add(next)
  const posts = new Set(
    [...border.devices.values()].flatMap(({ part, role, device }) => {
      const post = `${part}/${device.negative}`
      return role === 'battery' && reached.has(border.nodeOf.get(post) ?? post) ? [post] : []
    }),
  )
  return [...border.conductors.values()].filter((c) =>
    [c.from, c.to].some((t) => posts.has(`${t.part}/${t.terminal}`)),
  )
}
