/** What an installer adds to the handover pack. Everything else in it is worked out from the design. */
export interface Handover {
  /** Key of its language: "en", "de". Absent: English. */
  readonly language?: string
  /** Keys of chapters that are left out. */
  readonly hidden?: readonly string[]
  /** The installer's own paragraphs; those with the same place stand in this order. */
  readonly paragraphs?: readonly OwnParagraph[]
}

export interface OwnParagraph {
  /** "h1" */
  readonly id: string
  /** May be empty. */
  readonly heading: string
  /** One paragraph a line. */
  readonly text: string
  /** Key of the chapter that it follows; null: it stands first. One that is not in the pack counts as the last. */
  readonly after: string | null
}

/** Most own paragraphs of a pack, and most letters of one. */
export const MOST_PARAGRAPHS = 200
export const MOST_LETTERS = 10000
