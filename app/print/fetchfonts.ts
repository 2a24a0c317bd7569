import regular from '@expo-google-fonts/ibm-plex-sans-condensed/400Regular/IBMPlexSansCondensed_400Regular.ttf?url'
import bold from '@expo-google-fonts/ibm-plex-sans-condensed/600SemiBold/IBMPlexSansCondensed_600SemiBold.ttf?url'
import type { Fonts } from './pdf'

const read = async (url: string) => new Uint8Array(await (await fetch(url)).arrayBuffer())

/** The two weights of the typeface, from the files of this page. */
export async function fetchFonts(): Promise<Fonts> {
  const [regularBytes, boldBytes] = await Promise.all([read(regular), read(bold)])
  return { regular: regularBytes, bold: boldBytes }
}
