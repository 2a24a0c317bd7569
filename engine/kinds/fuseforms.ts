import type { Part } from '../model/design'
import { complete } from '../model/values'
import { type FuseForm, fuseColour } from '../tables/fuseratings'
import { kindOf } from './all'

/** Forms of fuse by kind of part; a kind that is not listed holds something else than fuses. */
const FORMS: Readonly<Record<string, FuseForm>> = {
  'fuse-block': 'blade',
  'fuse-blade': 'blade',
  'fuse-large-blade': 'large-blade',
  'fuse-bar': 'bolt-in',
  'fuse-bolt-in': 'bolt-in',
  'fuse-cartridge': 'cartridge',
  breaker: 'breaker',
}

/** What is fitted, in words: "Blade (ISO 8820-3 type C)"; empty where the kind states no class. */
export function fuseClass(part: Part): string {
  const kind = kindOf(part.kind)
  const field = kind?.fields.class
  if (!kind || field?.type !== 'choice') return ''
  const value = complete(kind.fields, part.values).class
  return typeof value === 'string' ? (field.options[value] ?? '') : ''
}

/** Standard colour of the body; empty where the standards name none, as for bolt-in fuses and odd ratings. */
export function bodyColour(part: Part, amps: number): string {
  const form = FORMS[part.kind]
  const values = kindOf(part.kind) && complete(kindOf(part.kind)!.fields, part.values)
  if (form === undefined || values?.class === 'other') return ''
  return fuseColour(form, amps) ?? ''
}
