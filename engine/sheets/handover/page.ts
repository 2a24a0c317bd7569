import { line, rect } from '../../kinds/draw'
import type { Design } from '../../model/design'
import type { Mark } from '../../model/marks'
import type { Chapter } from '../../words/handover/book'
import { textMark } from '../block'
import { cutTo, widthOf } from '../measure'
import type { Area } from '../paper'

/** A4 upright. The right edge carries the tab of the chapter; the foot stays free for the page number of the pack. */
export const PAGE = { w: 210, h: 297 }
export const AREA: Area = { x: 16, y: 24, w: 176, h: 255 }

const TAB = { w: 9, h: 15, step: 18, top: 26, x: 199 }
const SMALLEST = 2.5
/** Room for titles at the head of a page. */
const TITLES = 90

type Headed = Pick<Chapter, 'title' | 'number'>

/** Whom to call, at the foot of every page; name of the design at its head; the numbers of its chapters at its edge. */
export function pageMarks(design: Design, chapters: readonly Headed[]): Mark[] {
  const { name, vehicle, installer = '', contact = '' } = design.settings
  const head = name.trim() === '' ? vehicle.trim() : name.trim()
  const foot = [installer.trim(), ...contact.split('\n').map((l) => l.trim())]
    .filter((s) => s !== '')
    .join(' · ')
  const titles = asFits(chapters.map((c) => c.title).filter((t) => t !== ''))
  const right = AREA.x + AREA.w
  return [
    textMark(AREA.x, 15, { text: cutTo(80, head, SMALLEST), height: SMALLEST, ink: 'faint' }),
    textMark(
      right,
      15,
      { text: cutTo(TITLES, titles, SMALLEST), height: SMALLEST, ink: 'faint' },
      { anchor: 'end' },
    ),
    line([AREA.x, 18, right, 18], { pen: 'thin', ink: 'faint' }),
    line([AREA.x, 283, right, 283], { pen: 'thin', ink: 'faint' }),
    textMark(AREA.x, 288, { text: cutTo(150, foot, SMALLEST), height: SMALLEST }),
    ...chapters.flatMap((c) => tab(c.number)),
  ]
}

/** Titles in a row, without the first of them where there is no room for all. */
function asFits(titles: readonly string[]): string {
  const text = titles.join(' · ')
  return titles.length < 2 || widthOf(text, SMALLEST) <= TITLES ? text : asFits(titles.slice(1))
}

function tab(number: number | null): Mark[] {
  if (number === null) return []
  const y = TAB.top + (number - 1) * TAB.step
  return [
    rect(TAB.x, y, TAB.w, TAB.h, { pen: 'thin', fill: 'ink' }),
    textMark(
      TAB.x + TAB.w / 2,
      y + TAB.h / 2 + 2.5,
      { text: `${number}`, height: 5, weight: 'bold', ink: 'paper' },
      { anchor: 'middle' },
    ),
  ]
}
