import type { Design } from '../../model/design'
import { partById } from '../../model/lookup'
import { PV_CONTINUOUS } from '../../tables/pvfactors'
import type { Amps } from '../../units'
import type { RunAnswer } from '../answers'

/** What PV strings alone give a conductor for hours, A: 1.56 times their short-circuit current. 0 for other conductors. */
export function arrayAmps(design: Design, run: RunAnswer): Amps {
  const worst = [run.forward, run.backward].flatMap((w) => ('value' in w ? [w.value] : []))
  const gives = worst.flatMap((w) => w.witness).filter((line) => line.amps > 0)
  if (gives.length === 0 || gives.some((line) => partById(design, line.part)?.kind !== 'pv-array')) return 0
  return PV_CONTINUOUS * Math.max(...worst.map((w) => (w.amps === 'unlimited' ? 0 : w.amps)))
}
