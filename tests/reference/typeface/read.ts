import { readFileSync } from 'node:fs'

const FOLDER = new URL('../../../node_modules/@expo-google-fonts/ibm-plex-sans-condensed/', import.meta.url)

const FILES = {
  regular: '400Regular/IBMPlexSansCondensed_400Regular.ttf',
  bold: '600SemiBold/IBMPlexSansCondensed_600SemiBold.ttf',
} as const

/** The two weights of the product's typeface. */
export const readFonts = (): Record<keyof typeof FILES, Uint8Array> => ({
  regular: readWeight('regular'),
  bold: readWeight('bold'),
})

export const readWeight = (weight: keyof typeof FILES): Uint8Array =>
  new Uint8Array(readFileSync(new URL(FILES[weight], FOLDER)))
