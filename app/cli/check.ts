import {
  type AcceptedFinding,
  analyse,
  type BuiltAnalysed,
  builtFindings,
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
 * Checks a design file and prints its findings, worst first, then those that somebody has accepted, then what was
 * built otherwise brings about, or JSON. Exit status, by the open findings, those as built too: 0 nothing beyond notes, 3 some
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
  const { open, accepted } = sortAccepted(design, findings)
  const built = builtFindings(design, findings)
  if (args.includes('--json'))
    out.print(
      JSON.stringify({ ...reportOf(design, open, accepted, problems), asBuilt: asBuiltOf(built) }, null, 1),
    )
  else
    for (const text of [...linesOf(design, open, accepted), ...builtLines(built), LAST_WORD]) out.print(text)
  const grave = [...open, ...(built?.worse ?? [])]
  return problems.length > 0 ? 1 : Math.max(0, ...grave.map((f) => STATUS[f.level]))
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
  ]
}

/** What building otherwise has brought about, apart from what the drawing gives. null: nothing was built otherwise. */
function asBuiltOf(built: BuiltAnalysed | null) {
  if (!built) return null
  return built.worse.map(({ fix: _fix, ...f }) => ({ ...f, words: sentence(f, built.design) }))
}

function builtLines(built: BuiltAnalysed | null): string[] {
  if (!built) return []
  return [
    `As built, beyond what the drawing gives: ${built.worse.length}`,
    ...built.worse.flatMap((f) => [
      `As built, ${headOf(f, built.design)}`,
      `  ${sentence(f, built.design).text}`,
    ]),
  ]
}

const headOf = (finding: Finding, design: Design): string =>
  `${LEVEL_WORDS[finding.level]}: ${sentence(finding, design).title} (${finding.rule})`
