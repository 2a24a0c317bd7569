import type { Design } from '../../model/design'
import type { HandoverWords } from '../../words/handover/language'
import { handoverWords } from '../../words/handover/languages'
import type { PackReader } from './section'

export type PackWords = HandoverWords['pack']

/** The customer’s pack numbers its pages and heads its contents in the language of the handover. */
export const packWords = (reader: PackReader, { handover }: Design): PackWords =>
  handoverWords(reader === 'customer' ? handover?.language : undefined).pack
