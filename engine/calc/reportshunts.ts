import { type MeterQuestion, meter } from './meters'
import type { MeterStatement } from './networkfile'
import type { Prepared } from './prepare'
import { deviceCurrents, type ReadingError, readingErrors } from './reading'
import { figure, type ReadingReport, type ShareReport, type ShuntReport, tidy } from './reportshape'
import type { Share } from './share'

/** Shares and reading errors of every shunt. */
export function shuntReports(
  p: Prepared,
  coefficients: (branch: number) => Float64Array,
  statements: readonly MeterStatement[],
): ShuntReport[] {
  const stated = new Map(statements.map((s) => [s.shunt, s]))
  const shunts = p.form.branches.flatMap((b, e) => (b.kind === 'shunt' ? [e] : []))
  if (shunts.length === 0) return []
  const currents = deviceCurrents(p)
  return shunts.map((shunt) => {
    const { id } = p.form.branches[shunt]!
    const answer = meter(p, coefficients, question(p, shunt, stated.get(id)))
    const errors = readingErrors(currents, answer)
    const reading = (error: ReadingError): ReadingReport => ({
      amps: figure(error.amps),
      watts: answer.volts === undefined ? null : figure(error.amps * answer.volts),
      causes: error.causes.map((c) => ({ device: p.form.devices[c.device]!.id, amps: tidy(c.amps) })),
    })
    return {
      id,
      role: answer.role,
      reversed: answer.reversed,
      betweenBatteries: tidy(answer.betweenBatteries),
      shares: answer.shares.map((s) => shareReport(p, s)),
      over: reading(errors.over),
      under: reading(errors.under),
    }
  })
}

function question(p: Prepared, shunt: number, s: MeterStatement | undefined): MeterQuestion {
  return {
    shunt,
    ...(s?.role ? { role: s.role } : {}),
    ...(s?.members ? { members: new Set(s.members.map((id) => p.deviceIndex.get(id)!)) } : {}),
  }
}

function shareReport(p: Prepared, { device, nature, range, expected }: Share): ShareReport {
  const from = range && tidy(range.from)
  const to = range && tidy(range.to)
  return {
    device: p.form.devices[device]!.id,
    nature,
    share: from === undefined || to === undefined ? null : from === to ? from : [from, to],
    expected: expected ?? null,
  }
}
