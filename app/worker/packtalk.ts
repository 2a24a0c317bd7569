import type { Bookmark, Design, LabelSheetOptions, PackReader, PaperSize } from '../../engine'
import type { Colouring } from '../print/inks'

/** What a pack is made from. */
export interface PackWish {
  readonly design: Design
  readonly reader: PackReader
  /** Keys of sections, in order. */
  readonly contents: readonly string[]
  readonly paper: PaperSize
  readonly view: 'single-line' | 'both-poles'
  readonly colouring: Colouring
  readonly labels: LabelSheetOptions
}

/** A file that is made of the pack. */
export type PackFile = 'pdf' | 'csv' | 'xlsx'

/** What the page asks of the worker. */
export type PackAsk =
  | { readonly is: 'make'; readonly wish: PackWish }
  | { readonly is: 'sheet'; readonly index: number }
  | { readonly is: 'file'; readonly file: PackFile }

export interface PageRow {
  /** mm. */
  readonly w: number
  readonly h: number
}

/** A pack that is ready to be looked at. */
export interface MadePack {
  readonly pages: readonly PageRow[]
  readonly bookmarks: readonly Bookmark[]
  /** Pages of each section, by key; 0: it has nothing to say in this design. */
  readonly counts: Readonly<Record<string, number>>
}

/** What the worker tells, with the number of the question. */
export type PackTell =
  /** Sections that are made; `title`: what is being made now. */
  | { readonly is: 'progress'; readonly done: number; readonly of: number; readonly title: string }
  | { readonly is: 'made'; readonly pack: MadePack }
  | { readonly is: 'sheet'; readonly svg: string }
  | { readonly is: 'file'; readonly bytes: Uint8Array }
  | { readonly is: 'failed'; readonly why: string }

export interface Asked {
  readonly seq: number
  readonly ask: PackAsk
}

export interface Told {
  readonly seq: number
  readonly tell: PackTell
}
