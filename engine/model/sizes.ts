import { ownSize } from '../tables/ownsizes'
import { SIZES, type Size, sizeByKey } from '../tables/sizes'
import type { Celsius } from '../units'
import type { Design } from './design'

type Catalogue = Pick<Design, 'ownConductors'>

/** The size of a key in the catalogue of a design, its own conductors included; undefined: not chosen, or not known. */
export function sizeIn({ ownConductors }: Catalogue, key: string | null): Size | undefined {
  if (key === null) return undefined
  const own = ownConductors?.find((o) => o.key === key)
  return own ? ownSize(own) : sizeByKey(key)
}

/** The whole catalogue of a design: the built-in sizes, then its own conductors. */
export const sizesIn = ({ ownConductors = [] }: Catalogue): readonly Size[] => [
  ...SIZES,
  ...ownConductors.map(ownSize),
]

/** Insulation of a conductor: as it states, else as its own catalogue row does; undefined: the rule set's usual one. */
export const statedInsulationC = (
  catalogue: Catalogue,
  c: { readonly size: string | null; readonly insulationC: Celsius | null },
): Celsius | undefined => c.insulationC ?? sizeIn(catalogue, c.size)?.own?.insulationC ?? undefined
