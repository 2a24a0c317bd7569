/** Colour letters of IEC 60757: what is written on drawings and in the file. */
export const COLOURS: Readonly<Record<string, string>> = {
  BK: 'black',
  BN: 'brown',
  RD: 'red',
  OG: 'orange',
  YE: 'yellow',
  GN: 'green',
  BU: 'blue',
  VT: 'violet',
  GY: 'grey',
  WH: 'white',
  PK: 'pink',
  GD: 'gold',
  TQ: 'turquoise',
  SR: 'silver',
  GNYE: 'green-yellow',
}

/** One colour ("RD", "GNYE") or two of one insulation, ground and stripe ("BKRD"); green and yellow only as GNYE. */
export function isColour(letters: string): boolean {
  if (Object.hasOwn(COLOURS, letters)) return true
  const two = [letters.slice(0, 2), letters.slice(2)]
  return (
    letters.length === 4 &&
    letters !== 'YEGN' &&
    two[0] !== two[1] &&
    two.every((c) => Object.hasOwn(COLOURS, c))
  )
}

/** "red", "green-yellow", "black and red"; the letters themselves when they are none of the standard's. */
export function colourName(letters: string): string {
  if (Object.hasOwn(COLOURS, letters)) return COLOURS[letters]!
  return isColour(letters) ? `${COLOURS[letters.slice(0, 2)]} and ${COLOURS[letters.slice(2)]}` : letters
}
