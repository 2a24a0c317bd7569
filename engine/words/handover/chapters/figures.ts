import type { Draw } from '../../../calc/handover/draws'
import type { Store } from '../../../calc/handover/stores'
import type { Row } from '../book'
import type { Say } from '../say'

/** What takes as much stands in one row. */
export function drawRows(draws: readonly Draw[], { w, short, list, figure }: Say): Row[] {
  const r = w.readings
  const said = ({ amps, upTo }: Draw): string =>
    (upTo ? r.upTo : r.about)(figure(Number(amps.toPrecision(2)), 'A'))
  return [...grouped(draws, said)].map(([value, of]) => ({
    label: list(of.map((d) => short(d.part))),
    value,
  }))
}

/** The most that each battery of the system gives and takes; those with the same limits stand together. */
export function limitRows(stores: readonly Store[], { w, short, list, figure }: Say): Row[] {
  const r = w.readings
  const said = (amps: number | null): string => (amps === null ? w.cover.notStated : figure(amps, 'A'))
  const system = stores.filter((s) => !s.isStarting)
  const alike = grouped(system, ({ dischargeA, chargeA }) => `${dischargeA} ${chargeA}`)
  return [...alike.values()].flatMap((of): Row[] => {
    const { dischargeA, chargeA } = of[0]!
    const names = list(of.map((s) => short(s.part)))
    const [out, into] = of.length > 1 ? [r.mostOutEach, r.mostInEach] : [r.mostOut, r.mostIn]
    return [
      { label: `${names}, ${out}`, value: said(dischargeA) },
      { label: `${names}, ${into}`, value: said(chargeA) },
    ]
  })
}

function grouped<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>()
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item])
  return groups
}
