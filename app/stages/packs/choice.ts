import { PACK_READERS, PACK_SECTIONS, type PackReader, type PaperSize, usualContents } from '../../../engine'
import { readPreference, writePreference } from '../../files/preference'
import type { Colouring } from '../../print/inks'
import { type LabelChoice, labelChoiceFrom, USUAL_LABELS } from './labelchoice'

/** What the person has chosen to print; kept in this browser, for every design alike. */
export interface Choice {
  readonly reader: PackReader
  readonly paper: PaperSize
  readonly view: 'single-line' | 'both-poles'
  readonly colouring: Colouring
  /** Keys of sections in order, where they are other than usual for a reader. */
  readonly contents: Readonly<Partial<Record<PackReader, readonly string[]>>>
  readonly labels: LabelChoice
}

export const READERS = Object.keys(PACK_READERS) as readonly PackReader[]
export const PAPERS: readonly PaperSize[] = ['A4', 'A3', 'A2']

const USUAL: Choice = {
  reader: 'workshop',
  paper: 'A3',
  view: 'single-line',
  colouring: 'colour',
  contents: {},
  labels: USUAL_LABELS,
}

export const contentsOf = ({ reader, contents }: Choice): readonly string[] =>
  contents[reader] ?? usualContents(reader)

/** The choice with other contents for its reader. */
export function withContents(choice: Choice, keys: readonly string[]): Choice {
  const { [choice.reader]: _, ...others } = choice.contents
  const usual = keys.join() === usualContents(choice.reader).join()
  return { ...choice, contents: usual ? others : { ...others, [choice.reader]: keys } }
}

export const keepChoice = (choice: Choice): void => writePreference('packs', JSON.stringify(choice))

/** What was chosen last in this browser; whatever is not understood is as usual. */
export function keptChoice(): Choice {
  const kept = parsed(readPreference('packs'))
  const pick = <T extends string>(value: unknown, of: readonly T[], usual: T): T =>
    of.find((o) => o === value) ?? usual
  const contents = isRecord(kept.contents) ? kept.contents : {}
  return {
    reader: pick(kept.reader, READERS, USUAL.reader),
    paper: pick(kept.paper, PAPERS, USUAL.paper),
    view: pick(kept.view, ['single-line', 'both-poles'], USUAL.view),
    colouring: pick(kept.colouring, ['colour', 'black'], USUAL.colouring),
    contents: Object.fromEntries(
      READERS.flatMap((reader) => {
        const keys = contents[reader]
        const known = Array.isArray(keys) ? keys.filter(isKey) : []
        return known.length > 0 ? [[reader, known] as const] : []
      }),
    ),
    labels: labelChoiceFrom(isRecord(kept.labels) ? kept.labels : {}),
  }
}

function parsed(text: string | null): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text ?? '')
    return isRecord(value) ? value : {}
  } catch {
    return {}
  }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const isKey = (value: unknown): value is string => PACK_SECTIONS.some((s) => s.key === value)
