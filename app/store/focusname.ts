import { flushSync } from 'react-dom'

/**
 * The name comes next, so it has the keys at once: a letter typed before it had them would be a command. A dialog that is
 * closing takes them back for a moment. Not by finger: a keyboard would slide over the sheet.
 */
export function focusName(): void {
  if (matchMedia('(pointer: coarse)').matches) return
  flushSync(() => {})
  nameField()?.select()
  const over = new AbortController()
  // Who has left the field by a key meanwhile is not taken back to it.
  const left = (e: KeyboardEvent) => ENDS.has(e.key) && over.abort()
  window.addEventListener('keydown', left, { capture: true, signal: over.signal })
  setTimeout(() => {
    const field = nameField()
    if (!over.signal.aborted && field && document.activeElement !== field) field.select()
    over.abort()
  }, 60)
}

const ENDS: ReadonlySet<string> = new Set(['Enter', 'Escape', 'Tab'])

const nameField = () => document.querySelector<HTMLInputElement>('#part-name')
