import { readFile, writeFile } from 'node:fs/promises'
import { networkReport, readNetwork } from '../../engine/index'

export const NETWORK_USAGE = 'npm run loomwright -- network FILE [--out FILE]'

/** Where a command writes: whole lines. */
export interface Out {
  readonly print: (text: string) => void
  readonly complain: (text: string) => void
}

/**
 * Reads a network file and prints, as JSON, all that is computed of it. Exit status: 0 done, 1 the file is not
 * a sound network (each problem on a line of its own), 2 the command was given wrongly or a file could not be
 * read or written.
 */
export async function network(args: readonly string[], out: Out): Promise<number> {
  const asked = argumentsOf(args)
  if (!asked) {
    out.complain(`Usage: ${NETWORK_USAGE}`)
    return 2
  }
  let text: string
  try {
    text = await readFile(asked.file, 'utf8')
  } catch (error) {
    out.complain(`Cannot read ${asked.file}: ${reason(error)}`)
    return 2
  }
  const read = readNetwork(text)
  if ('problems' in read) {
    for (const p of read.problems)
      out.complain(`${p.path || 'file'}: expected ${p.expected}, found ${p.found}`)
    return 1
  }
  const json = JSON.stringify(networkReport(read.network), null, 1)
  if (asked.out === undefined) {
    out.print(json)
    return 0
  }
  try {
    await writeFile(asked.out, `${json}\n`)
    return 0
  } catch (error) {
    out.complain(`Cannot write ${asked.out}: ${reason(error)}`)
    return 2
  }
}

function argumentsOf(args: readonly string[]): { file: string; out?: string } | null {
  const files: string[] = []
  let out: string | undefined
  for (let i = 0; i < args.length; i++) {
    const word = args[i]!
    if (word === '--out') {
      out = args[++i]
      if (out === undefined) return null
    } else if (word.startsWith('-')) return null
    else files.push(word)
  }
  const file = files[0]
  if (file === undefined || files.length !== 1) return null
  return out === undefined ? { file } : { file, out }
}

const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error))
