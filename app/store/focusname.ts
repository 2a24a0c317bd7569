/** The name comes next: the card is there once the selection has been drawn. Not by finger: a keyboard would slide over the sheet. */
export function focusName(): void {
  if (matchMedia('(pointer: coarse)').matches) return
  setTimeout(() => document.querySelector<HTMLInputElement>('#part-name')?.select(), 60)
}
