import {
  type AcceptedFinding,
  analyse,
  type Design,
  type Finding,
  LAST_WORD,
  LEVEL_WORDS,
  type Level,
  sentence,
  sortAccepted,
} from '../../engine/index'
import type { Out } from './network'
import { openFile } from './openfile'

export const CHECK_USAGE = 'npm run loomwright -- check FILE [--json]'

/** Exit status by the worst open finding. */
const STATUS: Readonly<Record<Level, number>> = { note: 0, 'not-checked': 3, warning: 4, danger: 5 }

/**
 * Checks a design file and prints its findings, worst first, then those that somebody has accepted, or JSON. Exit
 * status, by the open findings: 0 nothing beyond notes, 3 some
 * check could not be made, 4 a warning, 5 a danger; 1 the file is not a sound design (each problem on a line of its
 * own), 2 the command was given wrongly or the file could not be read.
 */
export async function check(args: readonly string[], out: Out): Promise<number> {
  const files = args.filter((a) => a !== '--json')
  const [file] = files
  if (file === undefined || files.length !== 1 || file.startsWith('-')) {
    out.complain(`Usage: ${CHECK_USAGE}`)
    return 2
  }
  const opened = await openFile(file, out)
  if (typeof opened === 'number') return opened
  const { design, problems } = opened
  const { open, accepted } = sortAccepted(design, analyse(design).findings)
  if (args.includes('--json')) out.print(JSON.stringify(reportOf(design, open, accepted, problems), null, 1))
  else for (const text of linesOf(design, open, accepted)) out.print(text)
  return problems.length > 0 ? 1 : Math.max(0, ...open.map((f) => STATUS[f.level]))
}

function reportOf(
  design: Design,
  open: readonly Finding[],
  accepted: readonly AcceptedFinding[],
  problems: readonly unknown[],
) {
  const told = ({ fix: _fix, ...finding }: Finding) => ({ ...finding, words: sentence(finding, design) })
  return {
    design: design.settings.name,
    ruleSet: design.settings.ruleSet,
    problems,
    findings: open.map(told),
    accepted: accepted.map(({ finding, accepted: by }) => ({ ...told(finding), accepted: by })),
  }
}

function linesOf(design: Design, open: readonly Finding[], accepted: readonly AcceptedFinding[]): string[] {
  return [
    ...open.flatMap((finding) => {
      const { text, todo } = sentence(finding, design)
      return [headOf(finding, design), `  ${text}`, `  ${todo}`]
    }),
    open.length === 0
      ? accepted.length === 0
        ? 'The checks found nothing to report.'
        : 'No finding is open.'
      : `${open.length} in all.`,
    ...(accepted.length === 0 ? [] : [`Accepted, with a reason: ${accepted.length}`]),
    ...accepted.flatMap(({ finding, accepted: { reason, by, date } }) => [
      headOf(finding, design),
      `  ${reason}${by || date ? ` (${[by, date].filter(Boolean).join(', ')})` : ''}`,
    ]),
    LAST_WORD,
  ]
}

const headOf = (finding: Finding, design: Design): string =>
  `${LEVEL_WORDS[finding.level]}: ${sentence(finding, design).title} (${finding.rule})`
