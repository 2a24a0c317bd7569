import { download } from '../../files/disk'
import { fileName } from '../../files/session'
import { fetchFonts } from '../../print/fetchfonts'
import { rasterised } from '../../print/rasterised'
import { useOpen } from '../../store/open'
import { say } from '../../store/say'
import { Stopped } from '../../worker/packmaker'
import { maker, useMaking } from './making'

const stem = (): string => fileName(useOpen.getState().design).replace(/\.json$/, '')

function give(name: string, parts: BlobPart, type: string): void {
  download(name, new Blob([parts], { type }))
  say(`${name} is written.`)
}

/** What is stopped by hand is no fault. */
async function unlessStopped(act: () => Promise<void>): Promise<void> {
  try {
    await act()
  } catch (error) {
    if (!(error instanceof Stopped)) throw error
  }
}

export const takePdf = (): Promise<void> =>
  unlessStopped(async () => {
    const bytes = await maker.file('pdf')
    give(`${stem()}-${useMaking.getState().choice.reader}.pdf`, bytes as BlobPart, 'application/pdf')
  })

/** The sheet that is looked at. */
export const takePicture = (form: 'svg' | 'png'): Promise<void> =>
  unlessStopped(async () => {
    const { page, pack } = useMaking.getState()
    const size = pack?.pages[page]
    if (!size) return
    const svg = await maker.sheet(page)
    const name = `${stem()}-page-${page + 1}.${form}`
    if (form === 'svg') give(name, svg, 'image/svg+xml')
    else give(name, await rasterised(svg, size, await fetchFonts()), 'image/png')
  })

/** All schedules: as a workbook, or as comma-separated values, packed together. */
export const takeSchedules = (form: 'csv' | 'xlsx'): Promise<void> =>
  unlessStopped(async () => {
    const bytes = (await maker.file(form)) as BlobPart
    if (form === 'csv') give(`${stem()}-schedules-csv.zip`, bytes, 'application/zip')
    else
      give(
        `${stem()}-schedules.xlsx`,
        bytes,
        'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
      )
  })
