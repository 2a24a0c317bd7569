import type { Border } from '../calc/network'
import type { Conductor, Design } from '../model/design'
import { sizeIn } from '../model/sizes'
import type { SquareMillimetres } from '../units'
import { found, type Rule } from './rule'

/** 8 AWG: NFPA 70 article 552, battery to frame. */
const LEAST_MM2: SquareMillimetres = 8.366

/**
 * J10: the bond between the frame and a battery's negative is thinner than the battery's own lead. A feed that chafes
 * through on the bodywork comes back through the bond, limited by the feed's devices alone: no check of returns sees it.
 */
export const frameBond: Rule = {
  id: 'J10',
  looksFor: "bonds to the frame that are thinner than the battery's own lead",
  check: ({ border, design }) =>
    [...border.conductors.values()].flatMap((bond) => {
      const frameEnds = [bond.from, bond.to].filter((t) => border.frames.some((f) => f.part === t.part))
      const mm2 = sectionOf(design, bond)
      if (frameEnds.length !== 1 || mm2 === undefined) return []
      const start = [bond.from, bond.to].find((t) => t !== frameEnds[0])!
      const leads = leadsBehind(border, bond, `${start.part}/${start.terminal}`)
      if (leads.length === 0 || leads.includes(bond)) return []
      const lead = leads.reduce((a, b) => ((sectionOf(design, b) ?? 0) > (sectionOf(design, a) ?? 0) ? b : a))
      const least = Math.max(LEAST_MM2, sectionOf(design, lead) ?? 0)
      if (mm2 >= least * (1 - 1e-9)) return []
      return [
        found(
          'J10',
          'warning',
          'nfpa-552',
          { conductors: [bond.id, lead.id] },
          { bond: bond.id, lead: lead.id },
          { actual: { value: mm2, unit: 'mm²' }, limit: { value: least, unit: 'mm²' } },
        ),
      ]
    }),
}

const sectionOf = (design: Design, c: Conductor): SquareMillimetres | undefined =>
  sizeIn(design, c.size)?.sectionMm2

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
