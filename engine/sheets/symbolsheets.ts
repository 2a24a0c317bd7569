import { KINDS } from '../kinds/all'
import { line } from '../kinds/draw'
import { boxOf, symbolOf, terminalsOf } from '../kinds/place'
import type { Part, Turn } from '../model/design'
import type { Kind } from '../model/kind'
import { newDesign } from '../model/newdesign'
import type { Millimetres } from '../units'
import { LEAST, moved, textMark, USUAL } from './block'
import { columnWidth, type FlowBlock, flow, heading, listBlocks } from './flow'
import { shortValues } from './legend'
import { wrapTo } from './measure'
import { pageOf } from './schedules/page'
import type { Sheet } from './sheet'

/** The three ways of standing that are shown: as it leaves the shelf, turned by a quarter, mirrored. */
const STANCES: readonly (readonly [turn: Turn, mirrored: boolean])[] = [
  [0, false],
  [90, false],
  [0, true],
]
const COLUMNS = 2
const WORDS: Millimetres = 46

/** Every kind's symbol with title, class letter and terminal marks, upright, turned and mirrored. Pure. */
export function symbolSheets({ date = '' }: { readonly date?: string } = {}): Sheet[] {
  const page = pageOf('A3-landscape')
  const width = columnWidth(page.area, COLUMNS)
  const groups = [...new Set(KINDS.map((k) => k.group))]
  const blocks = groups.flatMap((group) =>
    listBlocks(
      [heading(group.charAt(0).toUpperCase() + group.slice(1), width)],
      KINDS.filter((k) => k.group === group).map((kind) => rowOf(kind, width)),
    ),
  )
  const pages = flow(blocks, page.area, COLUMNS)
  const empty = newDesign('symbols')
  const design = { ...empty, settings: { ...empty.settings, name: 'Symbols of all kinds of part' } }
  return pages.map(({ marks }, i): Sheet => {
    const words = { documentType: 'Symbols', subtitle: '', number: i + 1, of: pages.length, date }
    return {
      title: `${i + 1} Symbols`,
      w: page.paper.w,
      h: page.paper.h,
      marks: [...page.base(design, words), ...marks],
      links: [],
    }
  })
}

function rowOf(kind: Kind, width: Millimetres): FlowBlock {
  const parts = STANCES.map(
    ([turn, mirrored]): Part => ({
      ...{ id: '', kind: kind.key, designation: '', name: '', location: '', x: 0, y: 0 },
      ...{ turn, mirrored, values: shortValues(kind) },
    }),
  )
  const cell = (width - WORDS) / STANCES.length
  const drawn = parts.map((p) => ({ box: boxOf(p), marks: symbolOf(p).marks }))
  const terminals = terminalsOf(parts[0]!).map((t) =>
    t.mark && !t.name.includes(t.mark) ? `${t.mark} ${t.name}` : t.name,
  )
  const words = wrapTo(WORDS - 2, terminals.join(' · '), LEAST)
  const h = Math.max(...drawn.map((d) => d.box.h), 8 + words.length * 2.7) + 4
  const wide = drawn[0]!.box.w > cell - 4
  return {
    h,
    marks: [
      textMark(0, 5, { text: kind.title, height: USUAL, weight: 'bold' }),
      textMark(0, 8.6, { text: `designated ${kind.letter}…`, ink: 'faint' }),
      ...words.map((text, i) => textMark(0, 11.6 + i * 2.7, { text })),
      ...drawn.flatMap(({ box, marks }, i) => {
        // One that is too wide for its place takes the next one too, and is not shown mirrored.
        if (wide && i === 2) return []
        const room = wide && i === 0 ? 2 * cell : cell
        const scale = Math.min(1, (room - 4) / box.w)
        const shown = scale < 1 ? marks.filter((m) => m.is !== 'text') : marks
        const start = wide && i === 1 ? 2 * cell : i * cell
        const left = WORDS + start + (room - box.w * scale) / 2
        return moved(shown, left, (h - 1.5 - box.h * scale) / 2, scale)
      }),
      line([0, h - 0.6, width, h - 0.6], { pen: 'thin', ink: 'faint' }),
    ],
  }
}
