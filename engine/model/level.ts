/** danger: can burn or mislead badly; warning: wrong by the rule set or likely to disappoint; note: to know. */
export type Level = 'danger' | 'warning' | 'note' | 'not-checked'

/** How grave a level is; what was not checked may hide anything but what is known to be wrong. */
export const GRAVITY: Readonly<Record<Level, number>> = { danger: 3, warning: 2, 'not-checked': 1, note: 0 }
