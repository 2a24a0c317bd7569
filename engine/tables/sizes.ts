import { AUTO, AWG, BS_AU, METRIC, type Size, type SizeSeries } from './sizerows'

export type { Size, SizeSeries } from './sizerows'

/** The size catalogue, each series thinnest first. */
export const SIZES: readonly Size[] = [...METRIC, ...AWG, ...AUTO, ...BS_AU]

const byKey = new Map(SIZES.map((size) => [size.key, size]))

export const sizeByKey = (key: string): Size | undefined => byKey.get(key)

export const sizesOf = (series: SizeSeries): readonly Size[] => SIZES.filter((size) => size.series === series)
