import { type HandoverFacts, handoverFacts } from '../../calc/handover/facts'
import type { Design } from '../../model/design'
import type { OwnParagraph } from '../../model/handover'
import type { Book, Chapter, Cover, Piece, Row } from './book'
import { emergencyPieces } from './chapters/emergency'
import { finderPieces } from './chapters/finder'
import { cautionPieces, contactPieces, drawingPieces } from './chapters/last'
import { picturePieces } from './chapters/picture'
import { placePieces } from './chapters/places'
import { readingPieces } from './chapters/readings'
import { switchPieces } from './chapters/switches'
import { testPieces } from './chapters/tests'
import { carePieces, everydayPieces, storagePieces } from './chapters/use'
import { CHAPTERS, type ChapterKey } from './language'
import { handoverWords } from './languages'
import { revisionSaid } from './revision'
import { type Say, sayIn } from './say'

/** What a chapter says of a design. */
const PIECES: Readonly<Record<ChapterKey, (facts: HandoverFacts, say: Say) => readonly Piece[]>> = {
  emergency: emergencyPieces,
  finder: finderPieces,
  switches: switchPieces,
  picture: picturePieces,
  places: placePieces,
  readings: readingPieces,
  everyday: everydayPieces,
  storage: storagePieces,
  care: carePieces,
  cautions: cautionPieces,
  drawing: drawingPieces,
  tests: testPieces,
  contacts: contactPieces,
}

/** The handover pack of a design in its language, without hidden chapters, with the installer's own paragraphs. */
export function handoverBook(design: Design): Book {
  const say = sayIn(handoverWords(design.handover?.language), design)
  const facts = handoverFacts(design)
  const { paragraphs = [] } = design.handover ?? {}
  const shown = shownChapters(design)
  const after = (key: string | null): Chapter[] =>
    paragraphs.filter((p) => placeOf(p, shown) === key).map(ownChapter)
  const built = shown.flatMap((key, i): Chapter[] => [
    {
      key,
      is: key,
      number: i + 1,
      title: say.w.chapters[key].title,
      pieces: PIECES[key](facts, say),
      ...(key === 'finder' ? { seek: { label: say.w.finder.seek, none: say.w.finder.none } } : {}),
    },
    ...after(key),
  ])
  return {
    locale: say.w.locale,
    cover: coverOf(design, shown, say),
    chapters: [...after(null), ...built],
  }
}

export function shownChapters({ handover }: Design): ChapterKey[] {
  const hidden = new Set(handover?.hidden)
  return CHAPTERS.filter((key) => !hidden.has(key))
}

/** The chapter that a paragraph follows among those shown; a hidden one hands it to the one before it. */
function placeOf({ after }: OwnParagraph, shown: readonly ChapterKey[]): string | null {
  if (after === null) return null
  const at = CHAPTERS.indexOf(after as ChapterKey)
  if (at === -1) return shown.at(-1) ?? null
  return shown.findLast((key) => CHAPTERS.indexOf(key) <= at) ?? null
}

const ownChapter = ({ id, heading, text }: OwnParagraph): Chapter => ({
  key: `own:${id}`,
  is: 'own',
  number: null,
  title: heading.trim(),
  pieces: text
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => ({ is: 'text', text: line.trim() })),
})

function coverOf(design: Design, shown: readonly ChapterKey[], { w, figure, date }: Say): Cover {
  const c = w.cover
  const { settings: s } = design
  const row = (label: string, value: string | undefined): Row[] =>
    value === undefined || value.trim() === '' ? [] : [{ label, value: value.trim() }]
  const name = s.name.trim() || s.vehicle.trim()
  return {
    title: c.title,
    name,
    system: c.system(figure(s.systemV, 'V')),
    rows: [
      ...row(c.forCustomer, s.customer),
      ...(s.vehicle.trim() === name ? [] : row(c.vehicle, s.vehicle)),
      { label: c.builtBy, value: s.installer?.trim() || c.notStated },
      ...row(c.drawnBy, s.designer),
      ...row(c.revision, revisionSaid(design, w)),
      ...row(c.date, date(s.date)),
    ],
    find: {
      title: c.find,
      rows: shown.map((key, i) => ({ chapter: i + 1, question: w.chapters[key].question })),
    },
    chapterWord: c.chapter,
  }
}
