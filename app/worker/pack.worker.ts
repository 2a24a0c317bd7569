import { fetchFonts } from '../print/fetchfonts'
import { packPdf } from '../print/packpdf'
import { sheetSvg } from '../print/sheetsvg'
import { csvBundle, workbookOf } from '../print/tables'
import { PackTable } from './packtable'
import type { Asked, PackAsk, PackFile, PackTell } from './packtalk'

const table = new PackTable()
/** Number of the newest pack that was asked for: an older one under way is given up between two sections. */
let newest = 0

self.onmessage = async ({ data: { seq, ask } }: MessageEvent<Asked>) => {
  const tell = (told: PackTell) => self.postMessage({ seq, tell: told })
  if (ask.is === 'make') newest = seq
  try {
    await answer(ask, tell, () => newest !== seq)
  } catch (error) {
    tell({ is: 'failed', why: error instanceof Error ? error.message : String(error) })
  }
}

async function answer(ask: PackAsk, tell: (told: PackTell) => void, overtaken: () => boolean): Promise<void> {
  if (ask.is === 'make') {
    const pack = await table.make(ask.wish, tell, overtaken)
    if (pack) tell({ is: 'made', pack })
  } else if (ask.is === 'sheet') {
    tell({ is: 'sheet', svg: sheetSvg(table.sheet(ask.index), table.made.colouring) })
  } else tell({ is: 'file', bytes: await fileOf(ask.file) })
}

async function fileOf(file: PackFile): Promise<Uint8Array> {
  const { context, pack, colouring } = table.made
  if (file === 'csv') return csvBundle(context)
  if (file === 'xlsx') return workbookOf(context)
  return packPdf(context.design, pack, { fonts: await fetchFonts(), colouring })
}
