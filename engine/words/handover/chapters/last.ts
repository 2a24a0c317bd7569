import type { HandoverFacts } from '../../../calc/handover/facts'
import { ruleSetOf } from '../../../model/rules'
import type { Piece, Row } from '../book'
import { revisionSaid } from '../revision'
import type { Say } from '../say'

/** Cautions, and who may work on what. */
export function cautionPieces({ design }: HandoverFacts, { w }: Say): Piece[] {
  const c = w.cautions
  const rules = ruleSetOf(design)
  return [
    { is: 'caution', items: c.general, last: c.lastWord },
    { is: 'heading', text: c.whoTitle },
    { is: 'list', items: [c.you, c.skilled, c.licensed] },
    { is: 'text', text: rules ? `${c.ruleSet(rules.title)} ${c.notJudged}` : c.notJudged },
  ]
}

/** Where the drawing is. */
export function drawingPieces({ design }: HandoverFacts, { w, date }: Say): Piece[] {
  const revision = revisionSaid(design, w)
  const state = revision === '' ? [] : [w.drawing.state(revision, date(design.settings.date))]
  return [{ is: 'list', items: [w.drawing.inside, ...state, w.drawing.show] }]
}

/** Whom to call. */
export function contactPieces({ design }: HandoverFacts, { w, date }: Say): Piece[] {
  const c = w.contacts
  const { settings: s } = design
  const row = (label: string, value: string | undefined): Row[] =>
    value === undefined || value.trim() === '' ? [] : [{ label, value: value.trim() }]
  return [
    {
      is: 'rows',
      rows: [
        { label: c.installer, value: s.installer?.trim() || w.cover.notStated },
        { label: c.contact, value: s.contact?.trim() || w.cover.notStated },
        ...row(c.designer, s.designer),
        ...row(c.owner, s.customer),
        ...row(c.vehicle, s.vehicle),
        ...row(w.cover.revision, revisionSaid(design, w)),
        ...row(w.cover.date, date(s.date)),
      ],
    },
    { is: 'text', text: c.askFor },
  ]
}
