import { alternatorLoad } from './alternatorload'
import { arrayConductor } from './arrayconductor'
import { arrayCurrent } from './arraycurrent'
import { bareArray } from './barearray'
import { barLoad } from './barload'
import { breaking } from './breaking'
import { breakingVoltage } from './breakingvoltage'
import { builtOtherwise } from './builtotherwise'
import { bypass } from './bypass'
import { chargeLimit } from './chargelimit'
import { chargeVoltage } from './chargevoltage'
import { coilVoltage } from './coilvoltage'
import { contactLoad } from './contactload'
import { continuous } from './continuous'
import { crowded } from './crowded'
import { deafShunt } from './deafshunt'
import { dischargeLimit } from './dischargelimit'
import { drop } from './drop'
import { faultHeat } from './faultheat'
import type { Finding, Level } from './finding'
import { frameBond } from './framebond'
import { fuseLoad } from './fuseload'
import { hotWindow } from './hotwindow'
import { inrush } from './inrush'
import { leastSize } from './leastsize'
import { leftBehind } from './leftbehind'
import { sourceLoop } from './loop'
import { looseEnd } from './looseend'
import { lugFit } from './lugfit'
import { misjoin } from './misjoin'
import { misplacedShunt } from './misplacedshunt'
import { missedByBattery } from './missedbybattery'
import { missingField, missingRun } from './missing'
import { nearSource } from './nearsource'
import { noAmpacity } from './noampacity'
import { noCurve } from './nocurve'
import { noFaultCurrent } from './nofault'
import { noFitting } from './nofitting'
import { noLimit } from './nolimit'
import { noWayLeft } from './nowayleft'
import { oddRating } from './oddrating'
import { otherVoltage } from './othervoltage'
import { overload } from './overload'
import { ports } from './ports'
import { ratedVoltage } from './ratedvoltage'
import { reversedShunt } from './reversedshunt'
import type { Case, Rule } from './rule'
import { ruleSetUnknown } from './rulesetunknown'
import { samePlace } from './sameplace'
import { selective } from './selective'
import { sharedReturn } from './sharedreturn'
import { shortCircuit } from './shortcircuit'
import { shuntLoad } from './shuntload'
import { slowClearing } from './slowclearing'
import { sourceBehind } from './sourcebehind'
import { stray } from './stray'
import { stringFuse } from './stringfuse'
import { stringVoltage } from './stringvoltage'
import { sumsUp } from './sumsup'
import { thinReturn } from './thinreturn'
import { tooBig } from './toobig'
import { unevenShare } from './unevenshare'
import { unfed } from './unfed'
import { unknownKind } from './unknownkind'
import { unlikeBatteries } from './unlikebatteries'
import { unmade } from './unmade'
import { unprotected } from './unprotected'
import { untriedPositions } from './untried'
import { untriedShorts } from './untriedshorts'
import { voltageRating } from './voltagerating'
import { wayFuse } from './wayfuse'
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
  breaking,
  voltageRating,
  breakingVoltage,
  faultHeat,
  slowClearing,
  overload,
  unevenShare,
  contactLoad,
  barLoad,
  wayFuse,
  unlikeBatteries,
  ratedVoltage,
  chargeVoltage,
  coilVoltage,
  fuseLoad,
  continuous,
  inrush,
  chargeLimit,
  dischargeLimit,
  alternatorLoad,
  stringVoltage,
  bareArray,
  stringFuse,
  arrayConductor,
  arrayCurrent,
  hotWindow,
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
  lugFit,
  builtOtherwise,
  leftBehind,
  leastSize,
  frameBond,
  looseEnd,
  unfed,
  noLimit,
  noFaultCurrent,
  noCurve,
  noFitting,
  missingRun,
  missingField,
  otherVoltage,
  noAmpacity,
  untriedPositions,
  untriedShorts,
  unmade,
  unknownKind,
  ruleSetUnknown,
  nearSource,
  selective,
  oddRating,
  noWayLeft,
  samePlace,
]

/** What the check of a permanent id looks for, in a few words; the id itself where this version has no such check. */
export const lookedFor = (id: string): string => RULES.find((rule) => rule.id === id)?.looksFor ?? id

const ORDER: Readonly<Record<Level, number>> = { danger: 0, warning: 1, 'not-checked': 2, note: 3 }

/** All findings, worst first; within a level in the order of the rules. */
export function findingsOf(c: Case): Finding[] {
  return RULES.flatMap((rule) => rule.check(c)).sort((a, b) => ORDER[a.level] - ORDER[b.level])
}
