import type { Unit } from '../model/fields'
import type { Finding } from '../rules/finding'
import { figure } from './names'

/** The actual figure of a finding, or its limit, with its unit; nothing where it has none. */
export const amount = (f: Finding, which: 'actual' | 'limit'): string =>
  f[which] ? figure(f[which].value, f[which].unit) : ''

/** A fact that is a number, with its unit. */
export const numberFact = (f: Finding, name: string, unit: Unit): string =>
  figure(Number(f.facts[name] ?? 0), unit)
