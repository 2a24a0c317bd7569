import { valuesOf } from '../calc/fusefacts'
import { isBattery } from '../calc/galvanic'
import type { PartId } from '../model/design'
import type { Finding } from './finding'
import { lastingNets } from './lastingnets'
import { type Case, found, type Rule } from './rule'

interface Beside {
  readonly part: PartId
  readonly volts: number
  readonly chemistry: string
}

/**
 * R2: batteries side by side with different nominal voltages (the higher drives a fault current into the lower), or with
 * different chemistries, which want different charging. What only a combiner joins counts as apart.
 */
export const unlikeBatteries: Rule = {
  id: 'R2',
  looksFor: 'batteries in parallel with unequal voltages or of different chemistries',
  check: (c) =>
    [...besideEachOther(c).values()].flatMap((bank): Finding[] => {
      const parts = bank.map((b) => b.part)
      const volts = [...new Set(bank.map((b) => b.volts))]
      const chemistries = [...new Set(bank.map((b) => b.chemistry))]
      if (volts.length > 1) {
        const facts = { batteries: parts, what: 'voltage', volts: volts.map(String) }
        return [found('R2', 'danger', 'method', { parts }, facts)]
      }
      if (chemistries.length < 2) return []
      return [found('R2', 'warning', 'common-practice', { parts }, { batteries: parts, what: 'chemistry' })]
    }),
}

/** Batteries by the two nets between which they stand. */
function besideEachOther(c: Case): Map<string, Beside[]> {
  const { design, border, p } = c
  const of = lastingNets(c)
  const banks = new Map<string, Beside[]>()
  for (const [id, { part }] of border.devices) {
    const d = p.deviceIndex.get(id)
    if (d === undefined || !isBattery(p, d)) continue
    const key = `${of[p.negative[d]!]} ${of[p.positive[d]!]}`
    const values = valuesOf(design, part)
    const one = { part, volts: Number(values('volts')), chemistry: String(values('chemistry')) }
    banks.set(key, [...(banks.get(key) ?? []), one])
  }
  return banks
}
