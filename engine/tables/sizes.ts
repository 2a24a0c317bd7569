import { AUTO, AWG, BS_AU, METRIC, type Size, type SizeSeries } from './sizerows'

export type { Size, SizeSeries } from './sizerows'

/** The size catalogue, each series thinnest first. */
export const SIZES: readonly Size[] = [...METRIC, ...AWG, ...AUTO, ...BS_AU]

const byKey = new Map(SIZES.map((size) => [size.key, size]))

/** Finds a size by its key; undefined for one that the catalogue lacks. */
export type SizeLookup = (key: string) => Size | undefined

export const sizeByKey: SizeLookup = (key) => byKey.get(key)

export const sizesOf = (series: SizeSeries): readonly Size[] => SIZES.filter((size) => size.series === series)
