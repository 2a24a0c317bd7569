import type { Celsius, Metres } from '../units'
import { type Figured, figured } from './figure'
import { type RuleSet, ruleSetByKey } from './rulesets'

/** Key of the designer's own rule set in the settings of a design. */
export const OWN_RULES = 'own'

/** A designer's own figures over those of a built-in rule set. What is not stated stays as built in. */
export interface OwnRules {
  /** Key of a built-in rule set. */
  readonly basedOn: string
  /** Printed wherever results name their rule set. */
  readonly title: string
  readonly insulationC?: Celsius
  /** Largest device rating, % of the ampacity. */
  readonly devicePercent?: number
  /** Longest conductor ahead of the first device, and in a sheath throughout. */
  readonly nearSourceM?: Metres
  readonly nearSourceSheathedM?: Metres
  readonly dropCriticalPercent?: number
  readonly dropGeneralPercent?: number
  /** Current in a conduit or sheath, and in thermal insulation, % of that in free air. */
  readonly conduitPercent?: number
  readonly thermalPercent?: number
}

/** Bounds of each own figure, in its unit. */
export const OWN_BOUNDS = {
  insulationC: [40, 300],
  devicePercent: [1, 150],
  nearSourceM: [0, 2],
  nearSourceSheathedM: [0, 3],
  dropCriticalPercent: [0.1, 20],
  dropGeneralPercent: [0.1, 20],
  conduitPercent: [10, 100],
  thermalPercent: [10, 100],
} as const satisfies Readonly<Partial<Record<keyof OwnRules, readonly [least: number, most: number]>>>

/** The rule set with the designer's own figures, marked as such; undefined where it is based on none that is known. */
export function ownRuleSet(own: OwnRules): RuleSet | undefined {
  const base = ruleSetByKey(own.basedOn)
  if (!base) return undefined
  const or = (value: number | undefined, builtIn: Figured, scale = 1): Figured =>
    value === undefined ? builtIn : figured(value * scale, 'own')
  return {
    ...base,
    key: OWN_RULES,
    title: own.title,
    edition: `own figures over: ${base.title}, ${base.edition}`,
    about: `Figures of the designer's own where stated, otherwise as in "${base.title}". ${base.about}`,
    insulationC: own.insulationC ?? base.insulationC,
    surroundFactor: (surround) =>
      or(
        surround === 'free' ? undefined : surround === 'conduit' ? own.conduitPercent : own.thermalPercent,
        base.surroundFactor(surround),
        0.01,
      ),
    deviceShare: or(own.devicePercent, base.deviceShare, 0.01),
    nearSource: {
      open: or(own.nearSourceM, base.nearSource.open),
      sheathed: or(own.nearSourceSheathedM, base.nearSource.sheathed),
    },
    dropPercent: {
      critical: or(own.dropCriticalPercent, base.dropPercent.critical),
      general: or(own.dropGeneralPercent, base.dropPercent.general),
    },
  }
}
