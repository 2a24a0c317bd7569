import type { Ink } from '../../engine'

export type Colouring = 'colour' | 'black'

/** Inks on white paper. Every one but paper and tint prints dark on a black-and-white printer. */
const COLOUR: Readonly<Record<Ink, string>> = {
  ink: '#14191d',
  faint: '#474d52',
  positive: '#8f1d10',
  negative: '#14191d',
  data: '#3a3595',
  mains: '#5c4300',
  accent: '#0c4f58',
  danger: '#a00c30',
  warning: '#7a4800',
  paper: '#ffffff',
  tint: '#e9e9e6',
}

export const inkColour = (ink: Ink, colouring: Colouring): string =>
  colouring === 'colour' || ink === 'paper' || ink === 'tint' ? COLOUR[ink] : '#000000'
