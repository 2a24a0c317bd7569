import { barLoad } from './barload'
import { bypass } from './bypass'
import { contactLoad } from './contactload'
import { crowded } from './crowded'
import { deafShunt } from './deafshunt'
import { drop } from './drop'
import type { Finding, Level } from './finding'
import { fuseLoad } from './fuseload'
import { sourceLoop } from './loop'
import { looseEnd } from './looseend'
import { misjoin } from './misjoin'
import { misplacedShunt } from './misplacedshunt'
import { missedByBattery } from './missedbybattery'
import { missingField, missingRun } from './missing'
import { nearSource } from './nearsource'
import { noAmpacity } from './noampacity'
import { noLimit } from './nolimit'
import { otherVoltage } from './othervoltage'
import { overload } from './overload'
import { ports } from './ports'
import { reversedShunt } from './reversedshunt'
import type { Case, Rule } from './rule'
import { ruleSetUnknown } from './rulesetunknown'
import { samePlace } from './sameplace'
import { sharedReturn } from './sharedreturn'
import { shortCircuit } from './shortcircuit'
import { shuntLoad } from './shuntload'
import { sourceBehind } from './sourcebehind'
import { stray } from './stray'
import { stringVoltage } from './stringvoltage'
import { sumsUp } from './sumsup'
import { thinReturn } from './thinreturn'
import { tooBig } from './toobig'
import { unevenShare } from './unevenshare'
import { unfed } from './unfed'
import { unknownKind } from './unknownkind'
import { unmade } from './unmade'
import { unprotected } from './unprotected'
import { untriedPositions } from './untried'
import { wrongPole } from './wrongpole'

/** Every rule, in the order in which findings of one level are shown. A new rule is one file and one line here. */
export const RULES: readonly Rule[] = [
  misjoin,
  shortCircuit,
  wrongPole,
  sourceLoop,
  unprotected,
  tooBig,
  thinReturn,
  sumsUp,
  overload,
  unevenShare,
  contactLoad,
  barLoad,
  fuseLoad,
  stringVoltage,
  drop,
  bypass,
  sourceBehind,
  sharedReturn,
  reversedShunt,
  misplacedShunt,
  missedByBattery,
  deafShunt,
  stray,
  shuntLoad,
  ports,
  crowded,
  looseEnd,
  unfed,
  noLimit,
  missingRun,
  missingField,
  otherVoltage,
  noAmpacity,
  untriedPositions,
  unmade,
  unknownKind,
  ruleSetUnknown,
  nearSource,
  samePlace,
]

const ORDER: Readonly<Record<Level, number>> = { danger: 0, warning: 1, 'not-checked': 2, note: 3 }

/** All findings, worst first; within a level in the order of the rules. */
export function findingsOf(c: Case): Finding[] {
  return RULES.flatMap((rule) => rule.check(c)).sort((a, b) => ORDER[a.level] - ORDER[b.level])
}
