import {
  allChangeRows,
  analysedState,
  CHANGE_GROUPS,
  CHANGE_MARKS,
  type ChangeRow,
  compareDesigns,
  type Design,
  issuedDesign,
  isUnchanged,
  LAST_WORD,
  standingWords,
} from '../../engine/index'
import type { Out } from './network'
import { openFile } from './openfile'

export const COMPARE_USAGE =
  'npm run loomwright -- compare FILE FILE [--json], or compare FILE --from REVISION [--to REVISION] [--json]'

interface Wish {
  readonly files: readonly string[]
  readonly from?: string
  readonly to?: string
  readonly json: boolean
}

/**
 * Prints what differs between two design files, or between two revisions of one; without --to, the present state is the
 * later one. Exit status: 0 nothing differs but where things are drawn, 6 something does, 1 a file is not a sound
 * design, or a revision is not what was issued, 2 the command was given wrongly or a file could not be read.
 */
export async function compare(args: readonly string[], out: Out): Promise<number> {
  const wish = wishOf(args)
  if (!wish) {
    out.complain(`Usage: ${COMPARE_USAGE}`)
    return 2
  }
  const designs: Design[] = []
  for (const file of wish.files) {
    const opened = await openFile(file, out)
    if (typeof opened === 'number') return opened
    designs.push(opened.design)
  }
  const [first] = designs
  const states = wish.from === undefined ? designs : [stateOf(first!, wish.from), stateOf(first!, wish.to)]
  const missing = states.findIndex((s) => typeof s === 'string')
  if (missing >= 0) {
    out.complain(String(states[missing]))
    return 1
  }
  return told(states as readonly Design[], wish.json, out)
}

function told([before, after]: readonly Design[], json: boolean, out: Out): number {
  const comparison = compareDesigns(before!, after!)
  const rows = allChangeRows(analysedState(before!), analysedState(after!))
  if (json) {
    const heads = { before: headOf(before!), after: headOf(after!) }
    out.print(JSON.stringify({ ...heads, comparison, changes: rows }, null, 1))
  } else for (const line of linesOf(before!, after!, rows)) out.print(line)
  return isUnchanged(comparison, false) ? 0 : 6
}

/** The present state, or a revision; text says why there is none. */
function stateOf(design: Design, revision: string | undefined): Design | string {
  if (revision === undefined) return design
  const issued = issuedDesign(design, revision)
  if (issued) return issued
  return design.revisions?.some((r) => r.number === revision)
    ? `What is kept of revision ${revision} is not what was issued: it is not used.`
    : `There is no revision ${revision}. Issued: ${design.revisions?.map((r) => r.number).join(', ') || 'none'}.`
}

const headOf = (design: Design) => {
  const { revision, status, date } = standingWords(design)
  return { design: design.settings.name, revision, status, date }
}

function linesOf(before: Design, after: Design, rows: readonly ChangeRow[]): string[] {
  const head = (design: Design): string => {
    const { called, status } = standingWords(design)
    return [design.settings.name || 'Untitled design', called, status].filter(Boolean).join(', ')
  }
  const groups = Object.entries(CHANGE_GROUPS).flatMap(([group, title]) => {
    const own = rows.filter((r) => r.group === group)
    if (own.length === 0) return []
    return ['', `${title} (${own.length})`, ...own.flatMap(rowLines)]
  })
  return [
    `Before: ${head(before)}`,
    `After:  ${head(after)}`,
    ...(before.id === after.id
      ? []
      : ['These are two designs: parts are matched by their ids in the files.']),
    ...(rows.length === 0 ? ['', 'Nothing differs.'] : groups),
    '',
    LAST_WORD,
  ]
}

const rowLines = ({ what, name, lines }: ChangeRow): string[] => [
  ` ${CHANGE_MARKS[what]} ${name}`,
  ...lines.map((line) => `     ${line}`),
]

function wishOf(args: readonly string[]): Wish | null {
  const files: string[] = []
  const named: { from?: string; to?: string } = {}
  for (let i = 0; i < args.length; i++) {
    const word = args[i]!
    if (word === '--json') continue
    if (word === '--from' || word === '--to') {
      const value = args[++i]
      if (value === undefined) return null
      named[word === '--from' ? 'from' : 'to'] = value
    } else if (word.startsWith('-')) return null
    else files.push(word)
  }
  const ofOne = named.from !== undefined
  if (files.length !== (ofOne ? 1 : 2) || (named.to !== undefined && !ofOne)) return null
  return { files, ...named, json: args.includes('--json') }
}
