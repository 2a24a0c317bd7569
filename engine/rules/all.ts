import { barLoad } from './barload'
import { bypass } from './bypass'
import { contactLoad } from './contactload'
import { crowded } from './crowded'
import { drop } from './drop'
import type { Finding, Level } from './finding'
import { fuseLoad } from './fuseload'
import { sourceLoop } from './loop'
import { looseEnd } from './looseend'
import { misplacedShunt } from './misplacedshunt'
import { missedByBattery } from './missedbybattery'
import { missingField, missingRun } from './missing'
import { nearSource } from './nearsource'
import { noLimit } from './nolimit'
import { overload } from './overload'
import { ports } from './ports'
import { reversedShunt } from './reversedshunt'
import type { Case, Rule } from './rule'
import { sharedReturn } from './sharedreturn'
import { shortCircuit } from './shortcircuit'
import { shuntLoad } from './shuntload'
import { sourceBehind } from './sourcebehind'
import { stringVoltage } from './stringvoltage'
import { sumsUp } from './sumsup'
import { thinReturn } from './thinreturn'
import { tooBig } from './toobig'
import { unknownKind } from './unknownkind'
import { unprotected } from './unprotected'

/** Every rule, in the order in which findings of one level are shown. A new rule is one file and one line here. */
export const RULES: readonly Rule[] = [
  shortCircuit,
  sourceLoop,
  unprotected,
  tooBig,
  thinReturn,
  sumsUp,
  overload,
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
  shuntLoad,
  ports,
  crowded,
  looseEnd,
  noLimit,
  missingRun,
  missingField,
  unknownKind,
  nearSource,
]

const ORDER: Readonly<Record<Level, number>> = { danger: 0, warning: 1, 'not-checked': 2, note: 3 }

/** All findings, worst first; within a level in the order of the rules. */
export function findingsOf(c: Case): Finding[] {
  return RULES.flatMap((rule) => rule.check(c)).sort((a, b) => ORDER[a.level] - ORDER[b.level])
}
