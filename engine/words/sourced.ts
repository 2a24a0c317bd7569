import { sourceOf } from '../sources'

/** "IEC 60228, class 5 (restated)": where a figure comes from, and how far that is confirmed. */
export function sourceWords(key: string, confirmed = true): string {
  const source = sourceOf(key)
  const status = [source?.status, confirmed ? '' : 'this figure is not confirmed'].filter(Boolean).join('; ')
  return `${source?.title ?? key}${status === '' ? '' : ` (${status})`}`
}
