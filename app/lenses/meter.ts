import type { Metered, RunAnswer } from '../../engine'
import { ASIDE, type Look, look, NOT_CHECKED, type Painted, plain } from './look'

const LOOKS: Readonly<Record<Metered, Look>> = {
  bypasses: look('Bypasses the load-side shunt', 2.4, { ink: 'danger', coreMm: 1.2 }),
  shared: look('Measured in part', 1.5, { ink: 'danger', dash: [3, 1.8] }),
  measured: look('Measured', 0.9),
  'source-side': look('Source side of the shunt', 0.6, { dash: [4, 1, 0.6, 1] }),
  'no-load-shunt': look('No load-side shunt here', 0.3, { ink: 'faint' }),
}
/** The worst first. */
const ORDER: readonly Metered[] = ['bypasses', 'shared', 'source-side', 'measured', 'no-load-shunt']

export const METER_LOOKS: readonly Look[] = [...ORDER.map((m) => LOOKS[m]), NOT_CHECKED]

/** How a conductor's current counts at the load-side shunt; of a feed and its return together, the worse. */
export function meterOf(runs: readonly RunAnswer[]): Painted {
  const said = runs.flatMap((r) => (r.metered ? [r.metered] : []))
  const worst = ORDER.find((m) => said.includes(m))
  if (worst) return { look: LOOKS[worst], figure: FIGURES[worst] ?? null, rank: worst === 'bypasses' ? 2 : 1 }
  const power = runs.some(({ design: d }) => 'value' in d || d.notChecked !== 'not-in-network')
  return plain(power ? NOT_CHECKED : ASIDE)
}

const FIGURES: Partial<Record<Metered, string>> = { bypasses: 'not measured', shared: 'in part' }
