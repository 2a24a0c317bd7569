import type { ChapterKey } from './language'

/** The handover pack as words in order, for screen and paper alike; nothing in it is measured or placed yet. */
export interface Book {
  /** BCP 47 */
  readonly locale: string
  readonly cover: Cover
  readonly chapters: readonly Chapter[]
}

export interface Cover {
  readonly title: string
  /** The vehicle, or the name of the design. */
  readonly name: string
  readonly system: string
  readonly rows: readonly Row[]
  /** What somebody may look for, with the number of its chapter; most urgent first. */
  readonly find: {
    readonly title: string
    readonly rows: readonly { readonly chapter: number; readonly question: string }[]
  }
  readonly chapterWord: (n: string) => string
}

export interface Chapter {
  /** Key of a built-in chapter, or "own:h1" of a paragraph of the installer's own. */
  readonly key: string
  readonly is: ChapterKey | 'own'
  /** From 1; own paragraphs have none. */
  readonly number: number | null
  readonly title: string
  readonly pieces: readonly Piece[]
  /** Things in it can be sought by name: what the field for that is called, and what is said where nothing is. */
  readonly seek?: { readonly label: string; readonly none: string }
}

export interface Row {
  readonly label: string
  readonly value: string
}

/** A fuse to look at: what is written on it, where it is. */
export interface FuseLine {
  /** "15 A"; empty: no rating is stated. */
  readonly rating: string
  /** "blue"; empty: it has no standard colour. */
  readonly colour: string
  readonly text: string
  readonly place: string
  /** "skilled person", "feeds the switching". */
  readonly remark: string
}

export type Piece =
  | { readonly is: 'text'; readonly text: string; readonly strong?: true }
  | { readonly is: 'heading'; readonly text: string }
  | { readonly is: 'list'; readonly items: readonly string[]; readonly numbered?: true }
  | { readonly is: 'rows'; readonly rows: readonly Row[] }
  /** A thing with what is said of it. */
  | {
      readonly is: 'entry'
      readonly title: string
      readonly place: string
      readonly lines: readonly string[]
    }
  /** A dead thing with the fuses to look at, in order. */
  | {
      readonly is: 'find'
      /** Several hang on it: their titles. It is told with each of them. */
      readonly shared?: readonly string[]
      readonly title: string
      readonly place: string
      readonly first: string
      readonly fuses: readonly FuseLine[]
      readonly next: string
      readonly note: string
    }
  | { readonly is: 'caution'; readonly items: readonly string[]; readonly last: string }
  | { readonly is: 'picture'; readonly picture: PictureWords }

/** The picture of the system with its words: blocks in three bands. */
export interface PictureWords {
  readonly charging: PictureBand
  readonly stores: PictureBand
  readonly divided: PictureBand
  readonly note: string
}

export interface PictureBand {
  readonly title: string
  readonly blocks: readonly {
    readonly title: string
    readonly place: string
    readonly lines: readonly string[]
  }[]
}
