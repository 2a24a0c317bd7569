import type { StepGroup } from '../../calc/commissioning/step'

/** Titles of the groups of steps, and what each proves. */
export const GROUP_WORDS: Readonly<Record<StepGroup, { readonly title: string; readonly about: string }>> = {
  visual: {
    title: 'By eye',
    about: 'Everything is where it belongs, before anything is joined to a battery.',
  },
  polarity: { title: 'Polarity of sources', about: 'Plus is plus, before anything hangs on it.' },
  resistance: {
    title: 'Resistance and insulation',
    about: 'What should be joined is joined, what should be apart is apart. Everything stays isolated.',
  },
  isolating: {
    title: 'Isolators and fuses',
    about: 'What lies behind each is dead while it is open or out.',
  },
  'source-alone': { title: 'Each source alone', about: 'Every source shows the voltage that it should.' },
  loads: { title: 'Each load', about: 'Every load alone: what it draws, and what it is left with.' },
  relays: { title: 'Relays and interlocks', about: 'What switches, and what works it.' },
  shunts: { title: 'Shunts', about: 'No more than the monitor takes, then as the clamp meter.' },
  'load-side': { title: 'Load-side reading', about: 'With one load, then with all of them.' },
  'far-loads': { title: 'Drop at the far loads', about: 'Battery posts against the load, at the same time.' },
  charging: {
    title: 'Charge from each source',
    about: 'What comes out of it, and what the shunts make of it.',
  },
  'cut-outs': { title: 'Low-voltage cut-out', about: 'Loads go off before the battery is empty.' },
  data: { title: 'Data links', about: 'The monitor shows each device under its own name.' },
  alerts: { title: 'Alerts', about: 'A warning comes in time, and somebody notices it.' },
}
