import { readFile } from 'node:fs/promises'
import { type Design, type Problem, readDesign } from '../../engine/index'
import type { Out } from './network'

/** A design file with everything that was wrong with it; a number is the exit status where there is no design. */
export async function openFile(
  file: string,
  out: Out,
): Promise<{ readonly design: Design; readonly problems: readonly Problem[] } | 1 | 2> {
  let text: string
  try {
    text = await readFile(file, 'utf8')
  } catch (error) {
    out.complain(`Cannot read ${file}: ${reason(error)}`)
    return 2
  }
  const { design, problems } = readDesign(text)
  for (const { path, expected, found } of problems)
    out.complain(`${path === '' ? 'file' : path}: expected ${expected}, found ${found}`)
  return design ? { design, problems } : 1
}

export const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error))
