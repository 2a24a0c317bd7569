import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { analyse, lostSigns, PACK_READERS, PACK_SECTIONS } from '../../engine/index'
import { readFonts } from './fonts'
import type { Out } from './network'
import { openFile, reason } from './openfile'
import { packFiles } from './packfiles'
import { packWish } from './packwish'

export const PACK_USAGE = `npm run loomwright -- pack FILE --out DIR [--for ${Object.keys(PACK_READERS).join('|')}] [--contents KEY,KEY…]
      [--paper A2|A3|A4] [--both-poles] [--black] [--heat-shrink] [--csv] [--xlsx] [--svg] [--png]`

/**
 * Writes a pack for each reader, or for one, as PDF; where asked the schedules as CSV and workbook, and each sheet as
 * SVG and PNG. Exit status: 0 written, 1 the file is not a sound design (what could be read of it is written all the
 * same), 2 the command was given wrongly or a file could not be read or written.
 */
export async function pack(args: readonly string[], out: Out): Promise<number> {
  const wish = packWish(args)
  if (typeof wish === 'string') {
    const keys = PACK_SECTIONS.map((s) => s.key).join(', ')
    out.complain(`${wish}\nUsage: ${PACK_USAGE}\nKeys of contents: ${keys}`)
    return 2
  }
  const opened = await openFile(wish.file, out)
  if (typeof opened === 'number') return opened
  const { design, problems } = opened
  for (const { text, signs } of lostSigns(design))
    out.complain(`signs that print as "?": ${signs} in: ${text}`)
  const { answers, findings } = analyse(design)
  const context = {
    design,
    answers,
    findings,
    paper: wish.paper,
    view: wish.view,
    labels: { sleeves: wish.sleeves },
  }
  const fonts = await readFonts()
  try {
    await mkdir(wish.out, { recursive: true })
    for (const [name, content] of packFiles(context, wish, fonts)) {
      await writeFile(join(wish.out, name), content)
      out.print(join(wish.out, name))
    }
  } catch (error) {
    out.complain(`Cannot write to ${wish.out}: ${reason(error)}`)
    return 2
  }
  return problems.length > 0 ? 1 : 0
}
