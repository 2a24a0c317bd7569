import type { Answers } from '../../calc/answers'
import { statedTorque } from '../../edit/bench'
import { builtNote, conductorAsBuilt, type Difference, differencesAt } from '../../edit/benchfacts'
import { benchSteps, isTightened, type StepAnswer, workOf } from '../../edit/benchsteps'
import { sameForChecks } from '../../edit/sameforchecks'
import { makingOf } from '../../model/buying'
import type { Conductor, Design, TerminalRef } from '../../model/design'
import { conductorById } from '../../model/lookup'
import { formWords } from '../../words/forms'
import { conductorSchedule } from '../schedules/conductors'
import { endOf } from '../schedules/ends'
import { NOT_STATED } from '../schedules/lug'
import type { ScheduleCell, ScheduleRow } from '../schedules/schedule'

/** One end of a conductor, as the hand needs it. */
export interface BenchEnd {
  readonly at: TerminalRef
  readonly part: string
  readonly terminal: string
  readonly location: string
  /** "16 mm² × M8", "1 mm² ferrule"; empty: nothing is made up here. */
  readonly fitting: ScheduleCell
  /** "M8", "tab 6.3 mm, push-on"; "not stated". */
  readonly form: string
  /** Tightened by a nut or a screw; null: the part does not state its form. */
  readonly tightened: boolean | null
  /** As the maker of the part states it, N·m; null: nobody has recorded it. */
  readonly newtonMetres: number | null
}

/** What somebody at the bench must know of one conductor; as it was built, where that differs. */
export interface BenchCard {
  /** As drawn. */
  readonly conductor: Conductor
  readonly number: string
  readonly work: 'conductor' | 'data' | 'mains'
  readonly from: BenchEnd
  readonly to: BenchEnd
  readonly size: ScheduleCell
  /** IEC 60757 letters. */
  readonly colour: string
  /** One way, m. */
  readonly length: ScheduleCell
  /** Cut from stock, with the allowance at both ends, m. */
  readonly cut: ScheduleCell
  /** At each end, m. */
  readonly allowanceM: number
  /** For both ends: "W12 F5:4 / E3:+". */
  readonly marker: string
  /** Sleeve over, mm; empty: none. */
  readonly sleeve: ScheduleCell
  readonly protection: ScheduleCell
  readonly remark: string
  readonly steps: readonly StepAnswer[]
  readonly differences: readonly Difference[]
  /** What the workshop wrote beside it. */
  readonly note: string | null
}

/**
 * Every conductor as a card, in the order of their numbers. `answers` of the design as built, as far as they are there.
 * The words are those of the conductor schedule, so that screen and paper say the same. O(conductors × ends); after a
 * tick, O(conductors).
 */
export function benchCards(design: Design, answers: Answers): readonly BenchCard[] {
  const { asIs, rows } = wordsOf(design, answers)
  const { allowanceM } = makingOf(design)
  return rows.map(({ key, cells }): BenchCard => {
    const conductor = conductorById(design, key)!
    const c = conductorById(asIs, key)!
    const cell = (of: string): ScheduleCell => cells[of] ?? ''
    return {
      conductor,
      number: c.number,
      work: workOf(asIs, c),
      from: endAt(asIs, design, c.from, cell('fromLug')),
      to: endAt(asIs, design, c.to, cell('toLug')),
      size: cell('size'),
      colour: c.colour,
      length: cell('length'),
      cut: cell('cut'),
      allowanceM,
      marker: String(cell('marker')),
      sleeve: cell('sleeve'),
      protection: cell('protection'),
      remark: String(cell('remark')),
      steps: benchSteps(design, conductor, c, asIs),
      differences: differencesAt(design, conductor),
      note: builtNote(design, key),
    }
  })
}

interface Words {
  readonly design: Design
  /** As built. */
  readonly asIs: Design
  readonly rows: readonly ScheduleRow[]
}

const remembered = new WeakMap<Answers, Words>()

/** What does not hang on ticks is worked out once for each set of answers. */
function wordsOf(design: Design, answers: Answers): Words {
  const known = remembered.get(answers)
  if (known && known.design.making === design.making && sameForChecks(known.design, design)) return known
  const asIs = { ...design, conductors: design.conductors.map((c) => conductorAsBuilt(design, c)) }
  const words = { design, asIs, rows: conductorSchedule(asIs, answers, makingOf(design)).rows }
  remembered.set(answers, words)
  return words
}

function endAt(asIs: Design, design: Design, at: TerminalRef, fitting: ScheduleCell): BenchEnd {
  const { part, terminal, location, stud } = endOf(asIs, at)
  return {
    at,
    part,
    terminal,
    location,
    fitting,
    form: stud === null ? NOT_STATED : formWords(stud),
    tightened: stud === null ? null : isTightened(stud),
    newtonMetres: statedTorque(design, at),
  }
}
