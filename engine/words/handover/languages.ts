import { german } from './de'
import { english } from './en'
import type { HandoverWords } from './language'

/** Languages of the handover pack by key. A further one is a file like `en.ts` and a line here. */
export const HANDOVER_LANGUAGES: Readonly<Record<string, HandoverWords>> = { en: english, de: german }

/** The words of a language; English for one that this version does not have. */
export const handoverWords = (language: string | undefined): HandoverWords =>
  language !== undefined && Object.hasOwn(HANDOVER_LANGUAGES, language)
    ? HANDOVER_LANGUAGES[language]!
    : english
