import {
  analyse,
  assemble,
  type Design,
  type MadeSection,
  makeSection,
  type Pack,
  type PackContext,
  type Sheet,
  sectionsNamed,
} from '../../engine'
import type { Colouring } from '../print/inks'
import type { MadePack, PackTell, PackWish } from './packtalk'

interface Made {
  readonly context: PackContext
  readonly pack: Pack
  readonly colouring: Colouring
}

/** Makes packs section by section and keeps what was made, so that another choice of contents costs little. */
export class PackTable {
  private last: Made | null = null
  private text = ''
  private figures: ReturnType<typeof analyse> | null = null
  private drawnAs = ''
  private readonly sections = new Map<string, MadeSection>()

  /** Throws a RangeError as long as there is none. */
  get made(): Made {
    if (!this.last) throw new RangeError('no pack has been made yet')
    return this.last
  }

  sheet(index: number): Sheet {
    const sheet = this.made.pack.sheets[index]
    if (!sheet) throw new RangeError(`the pack has no page ${index + 1}`)
    return sheet
  }

  /** null: given up, as `overtaken` became true between two sections. */
  async make(
    wish: PackWish,
    tell: (told: PackTell) => void,
    overtaken: () => boolean,
  ): Promise<MadePack | null> {
    const { design, reader, paper, view, labels } = wish
    const wanted = sectionsNamed(wish.contents)
    tell({ is: 'progress', done: 0, of: wanted.length, title: 'Figures and findings' })
    await turn()
    const context: PackContext = { design, ...this.analysed(design), paper, view, labels }
    this.keepFor(JSON.stringify([paper, view, labels]))
    const made: MadeSection[] = []
    for (const [i, section] of wanted.entries()) {
      tell({ is: 'progress', done: i, of: wanted.length, title: section.title })
      await turn()
      if (overtaken()) return null
      const known = this.sections.get(section.key) ?? makeSection(section, context)
      this.sections.set(section.key, known)
      made.push(known)
    }
    const pack = assemble(reader, made, context)
    this.last = { context, pack, colouring: wish.colouring }
    return {
      pages: pack.sheets.map(({ w, h }) => ({ w, h })),
      bookmarks: pack.bookmarks,
      counts: Object.fromEntries(wish.contents.map((key) => [key, pack.counts.get(key) ?? 0])),
    }
  }

  private analysed(design: Design) {
    const text = JSON.stringify(design)
    if (!this.figures || text !== this.text) {
      this.figures = analyse(design)
      this.text = text
      this.sections.clear()
    }
    return this.figures
  }

  private keepFor(drawnAs: string): void {
    if (drawnAs !== this.drawnAs) this.sections.clear()
    this.drawnAs = drawnAs
  }
}

/** Lets messages that wait be taken. */
const turn = () => new Promise<void>((resolve) => setTimeout(resolve))
