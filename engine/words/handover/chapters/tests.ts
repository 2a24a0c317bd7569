import type { HandoverFacts } from '../../../calc/handover/facts'
import { commissioningSummary } from '../../commissioning/summary'
import type { Piece, Row } from '../book'
import type { Say } from '../say'

/** What the commissioning found, by numbers; nothing is worked out before the first reading is taken. */
export function testPieces({ design }: HandoverFacts, { w, date }: Say): Piece[] {
  const t = w.tests
  const { commissioning = [] } = design
  if (commissioning.length === 0) return [{ is: 'text', text: t.none }]
  const { counts, mended, unsigned } = commissioningSummary(design)
  const row = (label: string, count: number): Row => ({ label, value: String(count) })
  const open = counts.failed + counts.outOfDate + counts.notDone
  const signings = commissioning.flatMap((r) => (r.is === 'signing' ? [r] : []))
  return [
    { is: 'text', text: t.lead },
    {
      is: 'rows',
      rows: [
        row(t.passed, counts.passed),
        row(t.failed, counts.failed),
        row(t.outOfDate, counts.outOfDate),
        row(t.notDone, counts.notDone),
      ],
    },
    ...(mended > 0 ? [{ is: 'text' as const, text: t.mended(String(mended)) }] : []),
    ...signings.map(({ name, at }): Piece => ({ is: 'text', text: t.signed(name, date(at.slice(0, 10))) })),
    ...(unsigned > 0 ? [{ is: 'text' as const, text: t.unsigned }] : []),
    ...(open > 0 ? [{ is: 'text' as const, text: t.ask }] : []),
  ]
}
