import { rect } from '../../kinds/draw'
import type { Design } from '../../model/design'
import { conductorById } from '../../model/lookup'
import type { Mark } from '../../model/marks'
import { sizeIn } from '../../model/sizes'
import { LABEL_STOCKS, type LabelStock, labelCorner, sleeveFor } from '../../tables/labelstock'
import type { Millimetres } from '../../units'
import { listed } from '../../words/names'
import { moved } from '../block'
import { paragraph, together } from '../flow'
import { pageOf } from '../schedules/page'
import type { Sheet } from '../sheet'
import { LABEL_KINDS, type Label, type LabelKind } from './label'
import { labelMarks } from './labelmarks'
import { labelsOf } from './labels'
import { rulerBar } from './rulerbar'

export interface LabelSheetOptions {
  /** Stock for each kind of label. Default: small ones for conductors and ways, middle ones for parts, large ones for warnings. */
  readonly stock?: Partial<Readonly<Record<LabelKind, LabelStock>>>
  /** Markers of conductors on heat-shrink, each on the sleeve that its insulation takes; the others on their stock. */
  readonly sleeves?: boolean
  /** Labels already used up on the first sheet of each kind. */
  readonly used?: number
  /** Date of issue, ISO 8601. Default: the date of the design. */
  readonly date?: string
}

const USUAL_STOCK: Readonly<Record<LabelKind, LabelStock>> = {
  conductor: LABEL_STOCKS.small,
  way: LABEL_STOCKS.small,
  part: LABEL_STOCKS.middle,
  warning: LABEL_STOCKS.large,
}

/** Sheets of labels at 1:1: a guide on plain paper first, then the labels, each kind on its stock. */
export function labelSheets(design: Design, options: LabelSheetOptions = {}): readonly Sheet[] {
  const used = Math.max(0, Math.trunc(options.used ?? 0))
  const short: string[] = []
  const lots = lotsOf(design, options)
  const sheets = lots.flatMap((lot) => sheetsOf(lot, used, short))
  const lines = lots.map((l) => `${l.title}: ${l.labels.length} labels. ${l.stock.title}.`)
  return [guide(design, lines, short, sheets.length + 1, options.date ?? design.settings.date), ...sheets]
}

/** Labels that are printed on one kind of stock. */
interface Lot {
  readonly title: string
  readonly stock: LabelStock
  readonly labels: readonly Label[]
}

/** Kind by kind; of one kind, the smaller stock first. */
function lotsOf(design: Design, { stock, sleeves = false }: LabelSheetOptions): Lot[] {
  const labels = labelsOf(design)
  return (Object.keys(LABEL_KINDS) as LabelKind[]).flatMap((kind) => {
    const lots = new Map<string, { readonly stock: LabelStock; readonly labels: Label[] }>()
    for (const label of labels.filter((l) => l.kind === kind)) {
      const own = sleeves && kind === 'conductor' ? sleeveOf(design, label) : null
      const on = own ?? stock?.[kind] ?? USUAL_STOCK[kind]
      const lot = lots.get(on.title) ?? { stock: on, labels: [] }
      lots.set(on.title, lot)
      lot.labels.push(label)
    }
    return [...lots.values()]
      .map((lot) => ({ ...lot, title: titleOn(kind, lot.stock) }))
      .sort((a, b) => a.stock.h - b.stock.h)
  })
}

const titleOn = (kind: LabelKind, { short }: LabelStock): string =>
  short === undefined ? LABEL_KINDS[kind] : `${LABEL_KINDS[kind]}, ${short}`

function sleeveOf(design: Design, { conductors: [id] }: Label): LabelStock | null {
  const conductor = id === undefined ? undefined : conductorById(design, id)
  const over = conductor && sizeIn(design, conductor.size)?.overallMm
  return over ? sleeveFor(over) : null
}

function sheetsOf({ title, stock, labels }: Lot, used: number, short: string[]): Sheet[] {
  const perSheet = stock.columns * stock.rows
  const skip = used % perSheet
  const pages: Mark[][] = Array.from({ length: Math.ceil((skip + labels.length) / perSheet) }, () => [])
  labels.forEach((label, i) => {
    const [x, y] = labelCorner(stock, (skip + i) % perSheet)
    const { marks, cut } = labelMarks(onLow(label, stock), stock.w, stock.h, stock.pad)
    if (cut) short.push(`${label.lines[0]} ${label.place}`)
    pages[Math.floor((skip + i) / perSheet)]!.push(...moved(marks, x, y))
  })
  return pages.map((marks, i) => ({
    title: pages.length === 1 ? title : `${title}, ${i + 1} of ${pages.length}`,
    w: stock.paperW,
    h: stock.paperH,
    marks,
    links: [],
  }))
}

/** On a low label, as a sleeve is, all words stand on one line. */
const onLow = (label: Label, { h }: LabelStock): Pick<Label, 'lines' | 'sign'> =>
  h >= LOW || label.sign ? label : { lines: [label.lines.join('  ')] }
const LOW: Millimetres = 9

/** How to print, two bars to measure, the sizes that are used, and what was cut short. */
function guide(
  design: Design,
  lines: readonly string[],
  short: readonly string[],
  of: number,
  date: string,
): Sheet {
  const page = pageOf('A4-portrait')
  const { x, y, w, h } = page.area
  const words = together([
    paragraph('Printing the labels', w, { height: 3.5, weight: 'bold', after: 3 }),
    paragraph('Print at 100 %, without fitting to the page. Measure both bars: each is 100 mm long.', w),
    paragraph('Print one sheet on plain paper first and hold it against the stock, in front of a light.', w),
    paragraph(
      'Warnings read best on yellow stock. Signs are drawn after ISO 7010: W001 general, W012 electricity.',
      w,
    ),
    paragraph('Sizes of stock are common ones, from memory: those of the sheet at hand prevail.', w, {
      after: 3,
    }),
    ...(lines.length === 0
      ? [paragraph('There are no labels in this design.', w)]
      : lines.map((l) => paragraph(l, w))),
    ...(short.length === 0 ? [] : [paragraph(`No room for all words: ${listed(short, 20)}.`, w)]),
  ])
  const bar = y + Math.min(words.h + 8, h - 110)
  return {
    title: 'Printing the labels',
    w: page.paper.w,
    h: page.paper.h,
    marks: [
      ...page.base(design, {
        documentType: 'Labels',
        subtitle: 'Guide, on plain paper',
        number: 1,
        of,
        date,
      }),
      ...moved(words.marks, x, y + 2),
      ...rulerBar(x + 20, bar),
      ...rulerBar(x + 2, bar, true),
      rect(x + 40, bar + 25, LABEL_STOCKS.small.w, LABEL_STOCKS.small.h, { pen: 'thin', dash: true }),
      ...moved(
        labelMarks({ lines: ['38.1 × 21.2', 'mm'] }, LABEL_STOCKS.small.w, LABEL_STOCKS.small.h).marks,
        x + 40,
        bar + 25,
      ),
    ],
    links: [],
  }
}
