import type { CSSProperties } from 'react'

/** What insulation of each colour of IEC 60757 looks like on screen, and ink that reads on it. */
const PAINTS: Readonly<Record<string, readonly [paint: string, ink: string]>> = {
  BK: ['#1c1c1c', '#fff'],
  BN: ['#6f4322', '#fff'],
  RD: ['#c3211b', '#fff'],
  OG: ['#e4761b', '#111'],
  YE: ['#f2cf1d', '#111'],
  GN: ['#1f7a3a', '#fff'],
  BU: ['#1d54a6', '#fff'],
  VT: ['#6a3f97', '#fff'],
  GY: ['#8b9196', '#111'],
  WH: ['#fbfbf8', '#111'],
  PK: ['#eba4b4', '#111'],
  GD: ['#b8932f', '#111'],
  TQ: ['#2aa5a5', '#111'],
  SR: ['#c4c8cb', '#111'],
}

/** Ground and stripe of two colours stand side by side; the letters stand on the ground. */
export function swatch(letters: string): CSSProperties {
  const [ground, ink] = PAINTS[letters.slice(0, 2)] ?? ['#fff', '#111']
  const stripe = PAINTS[letters.slice(2, 4)]?.[0]
  return {
    color: ink,
    background: stripe ? `linear-gradient(${ground} 0 62%, ${stripe} 62% 100%)` : ground,
  }
}
