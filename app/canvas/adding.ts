let shift = false

/** Was Shift down when the pointer last went down on the sheet? Then what is picked adds to the selection. */
export const isAdding = (): boolean => shift

export const noteAdding = (e: { readonly shiftKey: boolean }): void => {
  shift = e.shiftKey
}
