import type { Design } from './design'

/** The drawing notes of a design; the first is note 1. Empty lines are none. */
export const drawingNotes = ({ settings }: Design): readonly string[] =>
  settings.notes
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
