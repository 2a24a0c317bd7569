import type { HandoverFacts } from '../../../calc/handover/facts'
import type { ShuntReadings } from '../../../calc/handover/readings'
import type { Piece, Row } from '../book'
import type { Say } from '../say'
import { drawRows, limitRows } from './figures'
import { lastingLines, lastingRows } from './lasting'

/** What each meter shows in usual states, what each source gives, and what is lost. */
export function readingPieces(facts: HandoverFacts, say: Say): Piece[] {
  const { design, readings, stores } = facts
  const { w, part, at, figure, list } = say
  const r = w.readings
  const shown = design.parts.filter((p) => p.kind === 'display' || p.kind === 'monitor-hub')
  const charging = readings.charging.map(
    ({ part: p, from, amps }): Row => ({
      label: from ? `${part(p)}, ${r.from(part(from))}` : part(p),
      value: amps === null ? r.notKnown : r.upTo(figure(Math.max(0, amps), 'A')),
    }),
  )
  const two = new Set(readings.shunts.map((s) => s.measures)).size > 1
  return [
    { is: 'text', text: w.chapters.readings.lead },
    ...(shown.length > 0 ? [{ is: 'text' as const, text: r.shownAt(list(shown.map(at))) }] : []),
    ...(readings.shunts.length > 0 ? [] : [{ is: 'text' as const, text: r.noMeter }]),
    ...readings.shunts.flatMap((s) => shuntPieces(s, readings.byHand, say)),
    ...(readings.shunts.length > 0 ? [{ is: 'text' as const, text: r.basis }] : []),
    ...(two ? [{ is: 'text' as const, text: r.differ }] : []),
    ...headed(
      r.draws,
      readings.shunts.length > 0 ? [{ is: 'text', text: r.drawsLead }] : [],
      drawRows(readings.draws, say),
    ),
    { is: 'heading', text: r.lasting },
    ...rowsOf(lastingRows(facts, say)),
    { is: 'list', items: lastingLines(facts, say) },
    ...headed(r.charging, [{ is: 'text', text: r.chargingLead }], charging),
    ...readings.rest.flatMap(({ chemistry, rows }) =>
      headed(
        r.voltage,
        [{ is: 'text', text: r.voltageLead(say.capital(w.chemistries[chemistry])) }],
        rows.map(({ charge, volts }) => ({
          label: r.charge(figure(100 * charge, '%')),
          value: r.about(figure(volts, 'V')),
        })),
      ),
    ),
    ...headed(r.limits, [], limitRows(stores, say)),
    ...(readings.leftOut.length > 0
      ? [{ is: 'text' as const, text: r.leftOut(list(readings.leftOut.map(part))) }]
      : []),
  ]
}

/** A heading with rows below it; nothing where there are none. */
const headed = (title: string, before: readonly Piece[], rows: readonly Row[]): Piece[] =>
  rows.length === 0 ? [] : [{ is: 'heading', text: title }, ...before, ...rowsOf(rows)]

const rowsOf = (rows: readonly Row[]): Piece[] => (rows.length === 0 ? [] : [{ is: 'rows', rows }])

function shuntPieces(s: ShuntReadings, byHand: boolean, say: Say): Piece[] {
  const { w, part, figure } = say
  const r = w.readings
  const flows = (amps: number | null): string => {
    if (amps === null) return r.notKnown
    if (s.measures === 'load') return figure(amps, 'A')
    return amps < 0 ? r.into(figure(-amps, 'A')) : r.out(figure(amps, 'A'))
  }
  const off = s.switchedOff === null ? flows(null) : r.upTo(flows(s.switchedOff))
  const place = s.part.location.trim()
  return [
    { is: 'heading', text: place === '' ? part(s.part) : `${part(s.part)}, ${place}` },
    { is: 'text', text: s.measures === 'battery' ? r.battery : r.load },
    {
      is: 'rows',
      rows: [
        { label: r.allOn, value: flows(s.allOn) },
        ...(byHand ? [{ label: r.switchedOff, value: off }] : []),
        { label: r.watching, value: flows(s.watching) },
        ...(s.ratingA === null ? [] : [{ label: r.rating, value: figure(s.ratingA, 'A') }]),
      ],
    },
  ]
}
