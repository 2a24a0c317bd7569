import { flushSync } from 'react-dom'

/**
 * The name comes next, so it has the keys at once: a letter typed before it had them would be a command. A dialog that is
 * closing takes them back for a moment. Not by finger: a keyboard would slide over the sheet.
 */
export function focusName(): void {
  if (matchMedia('(pointer: coarse)').matches) return
  flushSync(() => {})
  nameField()?.select()
  setTimeout(() => {
    const field = nameField()
    if (field && document.activeElement !== field) field.select()
  }, 60)
}

const nameField = () => document.querySelector<HTMLInputElement>('#part-name')
