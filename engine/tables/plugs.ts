/** What a data lead has at its end. Keys stand in files. Open standards by number, from memory. */
export const PLUG_TITLES = {
  '8p8c': 'Modular plug 8P8C (IEC 60603-7)',
  m12: 'Round plug M12, 5 poles (IEC 61076-2-101)',
  'usb-a': 'USB plug A',
  open: 'Open ends, on a screw clamp',
  moulded: 'Lead of its own, fixed to it',
  unknown: 'Not stated',
} as const
export type PlugKey = keyof typeof PLUG_TITLES

/** In the words of a list: "8P8C plug". */
const SHORT: Readonly<Record<Exclude<PlugKey, 'unknown'>, string>> = {
  '8p8c': '8P8C plug',
  m12: 'M12 plug, 5 poles',
  'usb-a': 'USB plug A',
  open: 'open ends',
  moulded: 'fixed lead',
}

/** undefined: not stated, or not a plug of the table. */
export const plugWords = (plug: string | null): string | undefined =>
  plug !== null && Object.hasOwn(SHORT, plug) ? SHORT[plug as keyof typeof SHORT] : undefined
