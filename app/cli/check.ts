import {
  analyse,
  type Design,
  type Finding,
  LAST_WORD,
  LEVEL_WORDS,
  type Level,
  sentence,
} from '../../engine/index'
import type { Out } from './network'
import { openFile } from './openfile'

export const CHECK_USAGE = 'npm run loomwright -- check FILE [--json]'

/** Exit status by the worst finding. */
const STATUS: Readonly<Record<Level, number>> = { note: 0, 'not-checked': 3, warning: 4, danger: 5 }

/**
 * Checks a design file and prints its findings, worst first, or JSON. Exit status: 0 nothing beyond notes, 3 some
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
  const { findings } = analyse(design)
  if (args.includes('--json')) out.print(JSON.stringify(reportOf(design, findings, problems), null, 1))
  else for (const text of linesOf(design, findings)) out.print(text)
  return problems.length > 0 ? 1 : Math.max(0, ...findings.map((f) => STATUS[f.level]))
}

function reportOf(design: Design, findings: readonly Finding[], problems: readonly unknown[]) {
  return {
    design: design.settings.name,
    ruleSet: design.settings.ruleSet,
    problems,
    findings: findings.map(({ fix: _fix, ...finding }) => ({ ...finding, words: sentence(finding, design) })),
  }
}

function linesOf(design: Design, findings: readonly Finding[]): string[] {
  return [
    ...findings.flatMap((finding) => {
      const { title, text, todo } = sentence(finding, design)
      return [`${LEVEL_WORDS[finding.level]}: ${title} (${finding.rule})`, `  ${text}`, `  ${todo}`]
    }),
    findings.length === 0 ? 'The checks found nothing to report.' : `${findings.length} in all.`,
    LAST_WORD,
  ]
}
