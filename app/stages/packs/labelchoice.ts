import { LABEL_KINDS, LABEL_STOCKS, type LabelKind, type LabelSheetOptions, ownStock } from '../../../engine'

/** Stock by its key; "own": the person's own size; "heat-shrink": sleeves, each as wide as its conductor takes. */
export type StockKey = keyof typeof LABEL_STOCKS | 'own' | 'heat-shrink'

/** What labels are printed on. */
export interface LabelChoice extends Readonly<Record<LabelKind, StockKey>> {
  /** Labels used up on the first sheet. */
  readonly used: number
  readonly own: OwnSize
}

/** A sheet of A4 with labels of one's own size, mm, in the middle of it. */
export interface OwnSize {
  readonly w: number
  readonly h: number
  readonly columns: number
  readonly rows: number
  readonly gapX: number
  readonly gapY: number
}

export const USUAL_LABELS: LabelChoice = {
  ...{ conductor: 'small', way: 'small', part: 'middle', warning: 'large' },
  used: 0,
  own: { w: 60, h: 30, columns: 3, rows: 9, gapX: 2, gapY: 0 },
}

export const KINDS = Object.keys(LABEL_KINDS) as readonly LabelKind[]
export const STOCKS = Object.keys(LABEL_STOCKS) as readonly (keyof typeof LABEL_STOCKS)[]

/** Stocks that a kind of label can stand on: markers alone are shrunk over conductors. */
export const stocksFor = (kind: LabelKind): readonly StockKey[] =>
  kind === 'conductor' ? [...STOCKS, 'heat-shrink', 'own'] : [...STOCKS, 'own']

const A4 = { w: 210, h: 297 }

/** Why the own size cannot be printed; null: it can. */
export function ownFault({ w, h, columns, rows, gapX, gapY }: OwnSize): string | null {
  const across = columns * w + (columns - 1) * gapX
  const down = rows * h + (rows - 1) * gapY
  if (across > A4.w) return `${columns} across take ${round(across)} mm; the sheet is ${A4.w} mm wide.`
  return down > A4.h ? `${rows} down take ${round(down)} mm; the sheet is ${A4.h} mm high.` : null
}

const round = (mm: number): number => Math.round(mm * 10) / 10

export function optionsOf(choice: LabelChoice): LabelSheetOptions {
  const { own, used } = choice
  const { w, h, columns, rows, gapX, gapY } = own
  const mine = ownFault(own)
    ? null
    : ownStock({ paperW: A4.w, paperH: A4.h, columns, rows, w, h, pitchX: w + gapX, pitchY: h + gapY })
  const stockOf = (key: StockKey) => (key === 'own' ? mine : key === 'heat-shrink' ? null : LABEL_STOCKS[key])
  return {
    used,
    sleeves: choice.conductor === 'heat-shrink',
    stock: Object.fromEntries(
      KINDS.flatMap((kind) => {
        const stock = stockOf(choice[kind])
        return stock ? [[kind, stock] as const] : []
      }),
    ),
  }
}

/** Bounds of each figure of the own size. */
export const OWN_BOUNDS: Readonly<Record<keyof OwnSize, readonly [least: number, most: number]>> = {
  w: [8, 210],
  h: [4, 297],
  columns: [1, 30],
  rows: [1, 60],
  gapX: [0, 50],
  gapY: [0, 50],
}

/** What was kept; whatever is not understood is as usual. */
export function labelChoiceFrom(kept: Readonly<Record<string, unknown>>): LabelChoice {
  const own = typeof kept.own === 'object' && kept.own !== null ? (kept.own as Record<string, unknown>) : {}
  const figure = (value: unknown, [least, most]: readonly [number, number], usual: number): number =>
    typeof value === 'number' && value >= least && value <= most ? value : usual
  const stock = (kind: LabelKind) => stocksFor(kind).find((s) => s === kept[kind]) ?? USUAL_LABELS[kind]
  const size = (key: keyof OwnSize) => figure(own[key], OWN_BOUNDS[key], USUAL_LABELS.own[key])
  return {
    conductor: stock('conductor'),
    way: stock('way'),
    part: stock('part'),
    warning: stock('warning'),
    used: figure(kept.used, [0, 300], 0),
    own: {
      w: size('w'),
      h: size('h'),
      columns: size('columns'),
      rows: size('rows'),
      gapX: size('gapX'),
      gapY: size('gapY'),
    },
  }
}
