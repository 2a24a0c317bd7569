import type { Answers, Guard, RunAnswer } from '../calc/answers'
import { contextOf } from '../calc/network'
import { electricalIn } from '../edit/terminal'
import type { Conductor, Design } from '../model/design'
import { partById } from '../model/lookup'
import { sizeIn } from '../model/sizes'
import { conductorName, figure, listed } from '../words/names'

/** What is said of one conductor in a few words on the drawing; a figure that is not known prints as "?". */
export interface RunWords {
  readonly number: string
  /** "16 mm²", "? mm²". */
  readonly size: string
  /** IEC 60757 letters. */
  readonly colour: string
  /** "2.4 m", "? m". */
  readonly length: string
  /** "in a sheath", or empty: the length ahead of the first device that is allowed leans on it. */
  readonly laid: string
  /** "max 85 A", "own 85 A" for a designer's own figure, "max not checked"; empty for what carries no power. */
  readonly current: string
  /**
   * "F3 100 A", "F2:4 20 A", "limited by G5 12.3 A", "NO PROTECTION", "protection not checked"; empty for what carries
   * no power.
   */
  readonly protection: string
  /** Is that trouble, or not known? */
  readonly inTrouble: boolean
}

export function runWords(design: Design, c: Conductor, answers: Answers | null): RunWords {
  const run = answers?.runs.get(c.id)
  return {
    number: c.number,
    size: c.size === null ? '? mm²' : (sizeIn(design, c.size)?.name ?? c.size),
    colour: c.colour,
    length: c.lengthM === null ? '? m' : figure(c.lengthM, 'm'),
    laid: c.sheathed ? 'in a sheath' : '',
    current: currentOf(run),
    protection: answers && run ? protectionOf(design, run) : '',
    inTrouble: run !== undefined && !carriesNone(run) && !isSound(run),
  }
}

function currentOf(run: RunAnswer | undefined): string {
  if (!run) return 'max ?'
  const { design: worst } = run
  if ('value' in worst) return `${run.ownFigure ? 'own' : 'max'} ${figure(worst.value, 'A')}`
  return carriesNone(run) ? '' : 'max not checked'
}

/** Data links, sense leads and mains: no current of the network runs in them. */
export const carriesNone = ({ design: worst }: RunAnswer): boolean =>
  !('value' in worst) && worst.notChecked === 'not-in-network'

const isSound = ({ verdict }: RunAnswer): boolean =>
  'value' in verdict && (verdict.value === 'protected' || verdict.value === 'near-source')

function protectionOf(design: Design, run: RunAnswer): string {
  if (carriesNone(run)) return ''
  if (!('value' in run.verdict)) return 'protection not checked'
  const guards = guardsOf(run)
  const names = named(design, guards)
  switch (run.verdict.value) {
    case 'unprotected':
      return 'NO PROTECTION'
    case 'near-source':
      return 'ahead of first device'
    case 'device-too-big':
      return `${names}: TOO BIG`
    case 'sources-add-up':
      return `${names}: ADD UP`
    case 'thin-return':
      return names === '' ? withoutLimit(design, run) : `${names}: TOO THIN`
    case 'protected':
      return names === '' ? 'nothing feeds it' : names
  }
}

/** Of a return: as long as a feed that is its cause is bare, that feed is the trouble, not the thickness of the return. */
function withoutLimit(design: Design, { sustained }: RunAnswer): string {
  const bare = bareOf(sustained).map((id) => conductorName(design, id))
  if (bare.length === 0) return 'without limit: TOO THIN'
  return `without limit while ${listed(bare, 3)} ${bare.length === 1 ? 'is' : 'are'} bare`
}

const bareOf = (sustained: RunAnswer['sustained']): readonly string[] =>
  sustained && 'value' in sustained ? sustained.value.bare : []

/** Members of the cuts at both ends, each once, nearest the conductor first; of a return, what limits it. */
function guardsOf(run: RunAnswer): readonly Guard[] {
  const ends = [run.from, run.to, ...(run.sustained ? [run.sustained] : [])]
  const found = new Map<string, Guard>()
  for (const end of ends)
    if ('value' in end) for (const g of end.value.guards) found.set(`${g.part}/${g.key}`, g)
  const all = [...found.values()]
  const devices = all.filter((g) => g.is === 'device')
  return devices.length > 0 ? devices : all
}

const MOST_NAMED = 2

function named(design: Design, guards: readonly Guard[]): string {
  const names = guards.slice(0, MOST_NAMED).map((g) => `${guardName(design, g)} ${figure(g.amps, 'A')}`)
  const more = guards.length - names.length
  const limited = guards[0]?.is === 'source' ? 'limited by ' : ''
  return limited + names.join(' + ') + (more > 0 ? ` + ${more} more` : '')
}

/** "F3"; "F2:4" for one way of a block. */
function guardName(design: Design, { is, part: id, key }: Guard): string {
  const part = partById(design, id)
  if (!part) return id
  const ways = is === 'device' ? electricalIn(part, contextOf(design))?.branches : undefined
  return (ways?.length ?? 0) > 1 ? `${part.designation}:${key}` : part.designation
}
