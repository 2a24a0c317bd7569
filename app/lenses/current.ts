import { figure, type RunAnswer } from '../../engine'
import { ASIDE, type Look, look, NOT_CHECKED, type Painted, plain } from './look'

/** Up to which worst-case current, A, a line has which width. */
const STEPS: readonly (readonly [number, Look])[] = [
  [5, look('up to 5 A', 0.35)],
  [20, look('up to 20 A', 0.7)],
  [60, look('up to 60 A', 1.1)],
  [150, look('up to 150 A', 1.6)],
  [Infinity, look('more than 150 A', 2.2)],
]
const UNLIMITED = look('Nothing limits it', 2.2, { ink: 'danger', coreMm: 1.2 })

export const CURRENT_LOOKS: readonly Look[] = [...STEPS.map(([, of]) => of), UNLIMITED, NOT_CHECKED]

/** The line weight of a current, A ≥ 0. */
export const weightOf = (amps: number): Look => STEPS.find(([upTo]) => amps <= upTo)![1]

/** Worst-case current: line weight by the greatest of the conductors that a line stands for, figure on the line. */
export function currentOf(runs: readonly RunAnswer[]): Painted {
  const counted = runs.filter((r) => !('notChecked' in r.design && r.design.notChecked === 'not-in-network'))
  if (counted.length === 0) return plain(ASIDE)
  let most = -1
  let own = false
  for (const { design, ownFigure } of counted) {
    if (!('value' in design)) return { look: NOT_CHECKED, figure: '?', rank: 1e6 }
    const amps = design.value === 'unlimited' ? Infinity : design.value
    if (amps > most) [most, own] = [amps, ownFigure]
  }
  if (most === Infinity) return { look: UNLIMITED, figure: 'no limit', rank: 1e7 }
  return { look: weightOf(most), figure: `${own ? 'own ' : ''}${figure(most, 'A')}`, rank: most }
}
