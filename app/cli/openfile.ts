import { readFile } from 'node:fs/promises'
import type { Design, Problem } from '../../engine/index'
import { readBytes } from '../files/readbytes'
import type { Out } from './network'

/** A design file, or the design inside a PDF, with everything that was wrong with it; a number is the exit status where there is no design. */
export async function openFile(
  file: string,
  out: Out,
): Promise<{ readonly design: Design; readonly problems: readonly Problem[] } | 1 | 2> {
  let bytes: Uint8Array
  try {
    bytes = new Uint8Array(await readFile(file))
  } catch (error) {
    out.complain(`Cannot read ${file}: ${reason(error)}`)
    return 2
  }
  const { design, problems } = readBytes(bytes)
  for (const { path, expected, found } of problems)
    out.complain(`${path === '' ? 'file' : path}: expected ${expected}, found ${found}`)
  return design ? { design, problems } : 1
}

export const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error))
