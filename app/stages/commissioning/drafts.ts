/** What was typed for a reading and not entered yet: it waits while one looks at the drawing or at another step. */
export interface Draft {
  readonly text: string
  readonly remark: string
}

const EMPTY: Draft = { text: '', remark: '' }
const drafts = new Map<string, Draft>()

export const draftOf = (key: string): Draft => drafts.get(key) ?? EMPTY

export const keepDraft = (key: string, draft: Draft): void => void drafts.set(key, draft)

export const dropDraft = (key: string): void => void drafts.delete(key)
