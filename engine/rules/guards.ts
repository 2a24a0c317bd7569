import type { EndAnswer, Guard, RunAnswer } from '../calc/answers'

/** The ends of a run that have an answer. */
export function endsOf(run: RunAnswer): EndAnswer[] {
  return [run.from, run.to].flatMap((end) => ('value' in end ? [end.value] : []))
}

/** The biggest single member of the cuts at both ends. */
export function strongestGuard(run: RunAnswer): Guard | undefined {
  return endsOf(run)
    .flatMap((end) => end.guards)
    .reduce<Guard | undefined>((most, g) => (most === undefined || g.amps > most.amps ? g : most), undefined)
}
