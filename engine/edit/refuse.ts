import type { Refusal } from './edit'

/** A refusal. `code` is permanent; `why` is one plain sentence for the person who tried. */
export const refuse = (code: string, why: string): Refusal => ({ refused: true, code, why })
