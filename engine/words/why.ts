import type {
  Ampacity,
  Answer,
  EndAnswer,
  NotChecked,
  RunAnswer,
  ShuntAnswer,
  WorstCase,
} from '../calc/answers'
import type { Design, Part } from '../model/design'
import { partById } from '../model/lookup'
import { sizeIn } from '../model/sizes'
import { conductorName, figure, listed, partName } from './names'
import { reasonWords } from './reasons'
import { sourceWords } from './sourced'

/** Why a current is as large as it is: the state of the devices that brings it about, greatest first. */
export function whyCurrent(worst: WorstCase, design: Design): string[] {
  if (worst.amps === 'unlimited') {
    const free = worst.unlimitedBy.map((id) => partName(design, id))
    return [free.length > 0 ? `No limit is stated for ${listed(free)}` : 'No stated limit bounds it']
  }
  if (worst.witness.length === 0) return ['Nothing drives a current this way']
  const lines = [...worst.witness]
    .sort((a, b) => Math.abs(b.amps) - Math.abs(a.amps))
    .map(
      (w) => `${partName(design, w.part)} ${w.amps < 0 ? 'takes' : 'gives'} ${figure(Math.abs(w.amps), 'A')}`,
    )
  return worst.shared ? [...lines, SHARED] : lines
}

const SHARED =
  'Divided with a parallel way by resistance: sizes, lengths, usual figures of fuses and contacts'

/** What limits a fault that is fed into one end of a conductor. */
export function whyProtected(end: EndAnswer, design: Design): string[] {
  if (end.amps === 'unlimited') {
    const source = end.source === null ? 'A source' : partName(design, end.source)
    const way = end.way.map((id) => conductorName(design, id))
    return [
      `${source} reaches this end through no fuse or breaker${way.length > 0 ? `, by way of ${listed(way)}` : ''}`,
    ]
  }
  if (end.guards.length === 0) return ['Nothing can feed a fault from this end']
  return end.guards.map((g) =>
    g.is === 'device'
      ? `${partName(design, g.part)} limits it to ${figure(g.amps, 'A')}`
      : `${partName(design, g.part)} can feed ${figure(g.amps, 'A')} at most`,
  )
}

/** What the figure of a return rests on, and what it does not see. */
export const RETURN_JUDGED =
  'Judged for a short circuit across the terminals of any part. A feed that touches the frame or another conductor on its way is not judged here: bond the frame as thick as the lead of the battery'

/** The row and column of the table, the factors, and where each comes from. */
export function whyAmpacity(
  { baseAmps, row, columnC, source, factors, confirmed }: Ampacity,
  design: Design,
): string[] {
  const size = sizeIn(design, row)?.name ?? row
  return [
    `${figure(baseAmps, 'A')}: row ${size}, column ${columnC} °C of ${sourceWords(source)}`,
    ...factors.map((f) => `× ${figure(f.value, '')} ${f.name}: ${sourceWords(f.source)}`),
    ...(confirmed ? [] : ['One of these figures could not be confirmed']),
  ]
}

/** "× 0.8 in a conduit or sheath, × 0.65 bunched": what lowers an ampacity; empty where nothing does. */
export const factorWords = ({ factors }: Ampacity): string =>
  factors.map((f) => `× ${figure(f.value, '')} ${f.name}`).join(', ')

/** One short statement on a not checked answer, for a card or a sheet. */
export function whyNot(answer: NotChecked, design: Design): string {
  const names = [
    ...answer.parts.map((id) => partName(design, id)),
    ...answer.conductors.map((id) => conductorName(design, id)),
  ]
  return `Not checked, because ${reasonWords(answer.notChecked)}${names.length > 0 ? `: ${listed(names)}` : ''}.`
}

const VERDICT_WORDS = {
  unprotected: 'No protection',
  'device-too-big': 'Protective device too big',
  'sources-add-up': 'Sources add up',
  'thin-return': 'Return too thin',
  'near-source': 'Ahead of the first device, within the allowed length',
  protected: 'Protected',
} as const

/** No source reaches it from either end, and no fault puts anything through it: there is nothing to protect it from. */
const isDead = (run: RunAnswer): boolean =>
  [run.from, run.to, ...(run.sustained ? [run.sustained] : [])].every(
    (end) => 'value' in end && end.value.amps === 0,
  )

/** Largest lasting current of a return; null where it has none or it is not known. */
const lasts = (run: RunAnswer): number | 'unlimited' | null =>
  run.sustained && 'value' in run.sustained ? run.sustained.value.amps : null

const bareOf = ({ sustained }: RunAnswer): readonly string[] =>
  sustained && 'value' in sustained ? sustained.value.bare : []

export function verdictWords(run: RunAnswer, design: Design): string {
  if (!('value' in run.verdict)) return whyNot(run.verdict, design)
  if (run.verdict.value === 'thin-return' && lasts(run) === 'unlimited') {
    const bare = bareOf(run).map((id) => conductorName(design, id))
    return bare.length === 0
      ? 'Without limit: nothing on its way limits a short circuit'
      : `Without limit while ${listed(bare, 3)} ${bare.length === 1 ? 'has' : 'have'} no protection`
  }
  return run.verdict.value === 'protected' && isDead(run)
    ? 'Nothing can feed it'
    : VERDICT_WORDS[run.verdict.value]
}

/** "F3 100 A": the devices that protect a run from either end, strongest first; empty where none does. */
export function guardWords(run: RunAnswer, design: Design): string {
  const seen = new Map<string, string>()
  for (const end of [run.from, run.to, ...(run.sustained ? [run.sustained] : [])]) {
    if (!('value' in end)) continue
    for (const g of [...end.value.guards].sort((a, b) => b.amps - a.amps)) {
      if (g.is !== 'device') continue
      const part = partById(design, g.part)
      const way = part && hasWays(part) ? `:${g.key}` : ''
      seen.set(`${g.part}/${g.key}`, `${part?.designation ?? g.part}${way} ${figure(g.amps, 'A')}`)
    }
  }
  const all = [...seen.values()]
  return all.length > MOST_GUARDS
    ? `${all.slice(0, MOST_GUARDS - 1).join(' + ')} + ${all.length - MOST_GUARDS + 1} more`
    : all.join(' + ')
}

const MOST_GUARDS = 3

/** A block whose ways are told apart by their number. */
const hasWays = (part: Part): boolean => Array.isArray(part.values.ways)

export function amountWords(answer: Answer<number | 'unlimited'>, unit: string): string {
  return 'value' in answer ? figure(answer.value, unit) : 'not checked'
}

const METERED_WORDS = {
  measured: 'The load-side shunt counts its loads',
  bypasses: 'Its loads bypass the load-side shunt',
  shared: 'The load-side shunt counts its loads in part',
  'source-side': 'On the source side of the load-side shunt',
  'no-load-shunt': 'No load-side shunt in this system',
} as const

export function meteredWords(run: RunAnswer): string {
  return run.metered === null ? '' : METERED_WORDS[run.metered]
}

/** The largest error of a shunt's reading, in amps and in watts at the nominal voltage, with who causes it. */
export function readingErrorWords(shunt: ShuntAnswer, design: Design): string[] {
  const volts = design.settings.systemV
  return (
    [
      ['more', shunt.over],
      ['less', shunt.under],
    ] as const
  ).flatMap(([sense, answer]) => {
    if (!('value' in answer)) return [whyNot(answer, design)]
    const { amps, causes } = answer.value
    if (amps !== 'unlimited' && amps < 1e-6) return []
    const who = causes.length > 0 ? `, caused by ${listed(causes.map((c) => partName(design, c.part)))}` : ''
    const watts = amps === 'unlimited' ? '' : ` (${figure(amps * volts, 'W')})`
    return [`May show up to ${figure(amps, 'A')}${watts} ${sense} than the truth${who}.`]
  })
}
