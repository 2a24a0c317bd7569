import type { Design } from '../model/design'
import { applyAccept, applyUnaccept } from './accept'
import { applyAdd } from './add'
import { applyBench } from './bench'
import { applyArticles, applyMaking } from './buying'
import { done } from './change'
import { applyRecord } from './commissioning'
import { applyConductor } from './conductor'
import type { Edit, EditResult } from './edit'
import { applyFollow } from './follow'
import { applyHandover } from './handover'
import { applyIssue, applyTakeBack } from './issue'
import { applyJoin } from './join'
import { applyMirror } from './mirror'
import { applyMove } from './move'
import { applyNotes, applyRefer } from './notes'
import { applyOwnConductors } from './ownconductors'
import { applyPart } from './part'
import { applyReconnect } from './reconnect'
import { applyRemove } from './remove'
import { applyRules } from './rules'
import { applySettings } from './settings'
import { applyText, applyUntext } from './text'
import { applyTurn } from './turn'
import { applyValue } from './value'
import { applyUnzone, applyZone } from './zone'
import { withZonesFollowing } from './zonesfollow'

/**
 * A design and an edit to a new design, or a refusal. Pure; what an edit does not touch keeps its identity, and an
 * edit that changes nothing gives back the same design. O(design) at most.
 */
export function apply(design: Design, edit: Edit): EditResult {
  const result = applied(design, edit)
  return result.refused ? result : done(withZonesFollowing(design, result.design))
}

function applied(design: Design, edit: Edit): EditResult {
  switch (edit.do) {
    case 'add':
      return applyAdd(design, edit)
    case 'remove':
      return applyRemove(design, edit)
    case 'move':
      return applyMove(design, edit)
    case 'follow':
      return applyFollow(design, edit)
    case 'turn':
      return applyTurn(design, edit)
    case 'mirror':
      return applyMirror(design, edit)
    case 'part':
      return applyPart(design, edit)
    case 'value':
      return applyValue(design, edit)
    case 'join':
      return applyJoin(design, edit)
    case 'reconnect':
      return applyReconnect(design, edit)
    case 'conductor':
      return applyConductor(design, edit)
    case 'settings':
      return applySettings(design, edit)
    case 'rules':
      return applyRules(design, edit)
    case 'own conductors':
      return applyOwnConductors(design, edit)
    case 'accept':
      return applyAccept(design, edit)
    case 'unaccept':
      return applyUnaccept(design, edit)
    case 'zone':
      return applyZone(design, edit)
    case 'unzone':
      return applyUnzone(design, edit)
    case 'text':
      return applyText(design, edit)
    case 'untext':
      return applyUntext(design, edit)
    case 'notes':
      return applyNotes(design, edit)
    case 'refer':
      return applyRefer(design, edit)
    case 'making':
      return applyMaking(design, edit)
    case 'articles':
      return applyArticles(design, edit)
    case 'record':
      return applyRecord(design, edit)
    case 'handover':
      return applyHandover(design, edit)
    case 'issue':
      return applyIssue(design, edit)
    case 'take back':
      return applyTakeBack(design, edit)
    case 'bench':
      return applyBench(design, edit)
    case 'all':
      return applyAll(design, edit.edits)
  }
}

/** All or nothing: the first refusal refuses the whole. */
function applyAll(design: Design, edits: readonly Edit[]): EditResult {
  let now = design
  for (const edit of edits) {
    const result = apply(now, edit)
    if (result.refused) return result
    now = result.design
  }
  return { refused: false, design: now }
}
