import { rect } from '../../kinds/draw'
import type { Design } from '../../model/design'
import type { Mark } from '../../model/marks'
import { LABEL_STOCKS, type LabelStock, labelCorner } from '../../tables/labelstock'
import { listed } from '../../words/names'
import { moved } from '../block'
import { paragraph, together } from '../flow'
import { pageOf } from '../schedules/page'
import type { Sheet } from '../sheet'
import { labelMarks } from './labelmarks'
import { LABEL_KINDS, type Label, type LabelKind, labelsOf } from './labels'
import { rulerBar } from './rulerbar'

export interface LabelSheetOptions {
  /** Stock for each kind of label. Default: small ones for conductors, ways and parts, large ones for warnings. */
  readonly stock?: Partial<Readonly<Record<LabelKind, LabelStock>>>
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
  const labels = labelsOf(design)
  const used = Math.max(0, Math.trunc(options.used ?? 0))
  const kinds = (Object.keys(LABEL_KINDS) as LabelKind[]).map((kind) => ({
    kind,
    stock: options.stock?.[kind] ?? USUAL_STOCK[kind],
    labels: labels.filter((l) => l.kind === kind),
  }))
  const filled = kinds.filter((k) => k.labels.length > 0)
  const short: string[] = []
  const sheets = filled.flatMap((k) => sheetsOf(LABEL_KINDS[k.kind], k.stock, k.labels, used, short))
  const lines = filled.map((k) => `${LABEL_KINDS[k.kind]}: ${k.labels.length} labels. ${k.stock.title}.`)
  return [guide(design, lines, short, sheets.length + 1, options.date ?? design.settings.date), ...sheets]
}

function sheetsOf(
  title: string,
  stock: LabelStock,
  labels: readonly Label[],
  used: number,
  short: string[],
): Sheet[] {
  const perSheet = stock.columns * stock.rows
  const skip = used % perSheet
  const pages: Mark[][] = Array.from({ length: Math.ceil((skip + labels.length) / perSheet) }, () => [])
  labels.forEach((label, i) => {
    const [x, y] = labelCorner(stock, (skip + i) % perSheet)
    const { marks, cut } = labelMarks(label.lines, stock.w, stock.h)
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
        labelMarks(['38.1 × 21.2', 'mm'], LABEL_STOCKS.small.w, LABEL_STOCKS.small.h).marks,
        x + 40,
        bar + 25,
      ),
    ],
    links: [],
  }
}
