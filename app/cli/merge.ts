import { writeFile } from 'node:fs/promises'
import {
  apply,
  bringFrom,
  broughtWords,
  conflictWords,
  type Design,
  type Problem,
  writeDesign,
} from '../../engine/index'
import type { Out } from './network'
import { openFile, reason } from './openfile'

export const MERGE_USAGE = 'npm run loomwright -- merge A B --out C'

/**
 * Joins what two devices have recorded at the bench on the same design: writes the drawing of A with the records of both,
 * and prints what B brings and where both recorded different facts. Exit status: 0 written, 1 a file is not a sound
 * design (nothing is written), 2 the command was given wrongly, the files are of two designs, or one could not be read
 * or written.
 */
export async function merge(args: readonly string[], out: Out): Promise<number> {
  const wish = wishOf(args)
  if (!wish) {
    out.complain(`Usage: ${MERGE_USAGE}`)
    return 2
  }
  const mine = await soundFile(wish.a, out)
  const theirs = await soundFile(wish.b, out)
  if (typeof mine === 'number') return mine
  if (typeof theirs === 'number') return theirs
  const brought = bringFrom(mine, theirs)
  if ('refused' in brought) {
    out.complain(brought.why)
    return 2
  }
  const merged = apply(mine, brought.edit)
  if (merged.refused) {
    out.complain(merged.why)
    return 2
  }
  try {
    await writeFile(wish.out, writeDesign(merged.design))
  } catch (error) {
    out.complain(`Cannot write ${wish.out}: ${reason(error)}`)
    return 2
  }
  for (const line of broughtWords(brought)) out.print(line)
  for (const conflict of brought.conflicts) out.print(conflictWords(merged.design, conflict))
  out.print(wish.out)
  return 0
}

/** A file with problems would lose records in silence: it is opened and mended first. */
async function soundFile(file: string, out: Out): Promise<Design | 1 | 2> {
  const opened: { design: Design; problems: readonly Problem[] } | 1 | 2 = await openFile(file, out)
  if (typeof opened === 'number') return opened
  return opened.problems.length > 0 ? 1 : opened.design
}

function wishOf(
  args: readonly string[],
): { readonly a: string; readonly b: string; readonly out: string } | null {
  const files: string[] = []
  let out: string | undefined
  for (let i = 0; i < args.length; i++) {
    const word = args[i]!
    if (word === '--out') out = args[++i]
    else if (word.startsWith('-')) return null
    else files.push(word)
  }
  const [a, b] = files
  return a !== undefined && b !== undefined && files.length === 2 && out !== undefined ? { a, b, out } : null
}
