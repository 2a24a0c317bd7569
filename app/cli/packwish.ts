import { PACK_READERS, type PackReader, type PaperSize, sectionsNamed } from '../../engine/index'
import type { Colouring } from '../print/inks'

/** What the command is asked for. */
export interface PackWish {
  readonly file: string
  readonly out: string
  readonly readers: readonly PackReader[]
  /** Keys of sections; null: what is usual for the reader. */
  readonly contents: readonly string[] | null
  readonly paper: PaperSize
  readonly view: 'single-line' | 'both-poles'
  readonly colouring: Colouring
  /** Markers of conductors on heat-shrink instead of adhesive labels. */
  readonly sleeves: boolean
  /** What is written beside the packs. */
  readonly also: ReadonlySet<Also>
}

const ALSO = ['csv', 'xlsx', 'svg', 'png'] as const
export type Also = (typeof ALSO)[number]

const VALUED = ['--out', '--for', '--contents', '--paper']
const FLAGS = ['--both-poles', '--black', '--heat-shrink', ...ALSO.map((a) => `--${a}`)]
const PAPERS: readonly string[] = ['A2', 'A3', 'A4'] satisfies readonly PaperSize[]

/** Reads the words of the command; a sentence says what is wrong with them. */
export function packWish(args: readonly string[]): PackWish | string {
  const files: string[] = []
  const flags = new Set<string>()
  const values = new Map<string, string>()
  for (let i = 0; i < args.length; i++) {
    const word = args[i]!
    if (VALUED.includes(word)) {
      const value = args[++i]
      if (value === undefined || value.startsWith('--')) return `${word} wants something after it.`
      values.set(word, value)
    } else if (FLAGS.includes(word)) flags.add(word)
    else if (word.startsWith('-')) return `There is no ${word}.`
    else files.push(word)
  }
  const [file] = files
  const out = values.get('--out')
  if (file === undefined || files.length > 1) return 'Name one design file.'
  if (out === undefined) return 'Say with --out where the files are to go.'
  return wishOf(file, out, values, flags)
}

function wishOf(
  file: string,
  out: string,
  values: ReadonlyMap<string, string>,
  flags: ReadonlySet<string>,
): PackWish | string {
  const paper = (values.get('--paper') ?? 'A3').toUpperCase()
  if (!isPaper(paper)) return `There is no paper ${paper}: ${PAPERS.join(', ')}.`
  const reader = values.get('--for')
  if (reader !== undefined && !isReader(reader))
    return `There is no pack for ${reader}: ${Object.keys(PACK_READERS).join(', ')}.`
  const contents =
    values
      .get('--contents')
      ?.split(',')
      .filter((key) => key !== '') ?? null
  try {
    sectionsNamed(contents ?? [])
  } catch (error) {
    return error instanceof Error ? `${error.message}.` : String(error)
  }
  return {
    ...{ file, out, contents, paper },
    readers: reader === undefined ? Object.keys(PACK_READERS).filter(isReader) : [reader],
    view: flags.has('--both-poles') ? 'both-poles' : 'single-line',
    colouring: flags.has('--black') ? 'black' : 'colour',
    sleeves: flags.has('--heat-shrink'),
    also: new Set(ALSO.filter((a) => flags.has(`--${a}`))),
  }
}

const isPaper = (word: string): word is PaperSize => PAPERS.includes(word)
const isReader = (word: string): word is PackReader => Object.hasOwn(PACK_READERS, word)
