import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import type { Fonts } from '../print/pdf'

/** Where the two weights of the typeface lie in the installed package. */
export function fontFiles(): Readonly<Record<keyof Fonts, string>> {
  const { resolve } = createRequire(import.meta.url)
  const at = (file: string) => resolve(`@expo-google-fonts/ibm-plex-sans-condensed/${file}`)
  return {
    regular: at('400Regular/IBMPlexSansCondensed_400Regular.ttf'),
    bold: at('600SemiBold/IBMPlexSansCondensed_600SemiBold.ttf'),
  }
}

export async function readFonts(): Promise<Fonts> {
  const { regular, bold } = fontFiles()
  const read = async (file: string) => new Uint8Array(await readFile(file))
  return { regular: await read(regular), bold: await read(bold) }
}
