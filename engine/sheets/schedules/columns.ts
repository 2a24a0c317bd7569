import type { Column } from './schedule'

type More<K extends string> = Partial<Pick<Column<K>, 'band' | 'below' | 'box' | 'decimals'>>

/** A column of text. */
export const words = <K extends string>(
  key: K,
  title: string,
  wide: number,
  more: More<K> = {},
): Column<K> => ({
  key,
  title,
  unit: '',
  align: 'start',
  wide,
  ...more,
})

/** A column of figures in one unit. */
export const figures = <K extends string>(
  key: K,
  title: string,
  unit: Column['unit'],
  wide: number,
  more: More<K> = {},
): Column<K> => ({ key, title, unit, align: 'end', wide, ...more })
