import type { RunAnswer, Verdict } from '../../engine'
import { ASIDE, type Look, look, NOT_CHECKED, type Painted, plain } from './look'

const GUARDED = look('Guarded by it', 1.8, { ink: 'accent' })
const PROTECTED = look('Protected', 0.5)
const AHEAD = look('Ahead of the first device', 0.8, { dash: [3, 0.9, 0.6, 0.9] })
const TOO_MUCH = look('Device too big, sources add up, thin return', 1.5, { ink: 'danger', dash: [3, 1.8] })
// An empty tube: nothing in it holds the current back.
const NONE = look('No protection', 2.6, { ink: 'danger', coreMm: 1.3 })

export const PROTECTION_LOOKS: readonly Look[] = [NONE, TOO_MUCH, AHEAD, PROTECTED, GUARDED, NOT_CHECKED]

const LOOKS: Readonly<Record<Verdict, Look>> = {
  unprotected: NONE,
  'device-too-big': TOO_MUCH,
  'sources-add-up': TOO_MUCH,
  'thin-return': TOO_MUCH,
  'near-source': AHEAD,
  protected: PROTECTED,
}

/** The worst first. */
const ORDER: readonly Look[] = [NONE, TOO_MUCH, NOT_CHECKED, AHEAD, PROTECTED]

/**
 * What guards which conductor. A line that stands for several conductors shows the worst of them. `pointed`: null
 * where no device is pointed at, else whether that one guards the conductor; trouble is shown all the same.
 */
export function protectionOf(runs: readonly RunAnswer[], pointed: boolean | null): Painted {
  const looks = runs.flatMap(({ verdict }): Look[] => {
    if ('value' in verdict) return [LOOKS[verdict.value]]
    return verdict.notChecked === 'not-in-network' ? [] : [NOT_CHECKED]
  })
  const worst = ORDER.find((of) => looks.includes(of))
  if (worst === undefined) return plain(ASIDE)
  const trouble = worst === NONE || worst === TOO_MUCH
  if (pointed && !trouble) return plain(GUARDED)
  if (pointed === false && !trouble) return plain(FAINT)
  return { look: worst, figure: trouble ? FIGURES.get(worst)! : null, rank: worst === NONE ? 2 : 1 }
}

/** Not what is looked for: stands back while a device is pointed at. */
const FAINT = look('Not guarded by it', 0.3, { ink: 'faint' })

const FIGURES: ReadonlyMap<Look, string> = new Map([
  [NONE, 'no protection'],
  [TOO_MUCH, 'under-protected'],
])
