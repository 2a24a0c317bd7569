import { toNumber } from '../units'
import { breakingCurrents } from './breaking'
import { drawing, loadDrops, sourcesOff } from './drop'
import { type EnvelopeResult, envelopes } from './envelope'
import { nodeFaults } from './fault'
import { copperFactor, type FaultCase, GREATEST, LEAST } from './faultsystem'
import { loadFlow } from './loadflow'
import type { NetworkFile } from './networkfile'
import { type Prepared, prepare } from './prepare'
import { type EndProtection, type ProtectionGap, type ProtectionResult, protection } from './protection'
import {
  type BranchReport,
  type BreakingReport,
  type DropReport,
  type EndReport,
  type FaultReport,
  type Figure,
  figure,
  type LoadFlowReport,
  type NetworkReport,
  type NotMade,
  type SustainedReport,
  tidy,
} from './reportshape'
import { shuntReports } from './reportshunts'
import { type ReturnGap, returns, type Sustained } from './returns'

/**
 * Everything that can be computed of a network, as plain data in the file's own ids. Each part that has no answer
 * says why; the others stand. Throws a RangeError where the form breaks its own rules (read it by readNetwork).
 */
export function networkReport(file: NetworkFile): NetworkReport {
  const p = prepare(file)
  const worst = envelopes(p)
  const hot = copperFactor(file.conductorCelsius ?? 20)
  const ohms = p.resistance.map((r, e) => (p.form.branches[e]!.kind === 'conductor' ? r * hot : r))
  return {
    counts: {
      nodes: file.nodes.length,
      branches: file.branches.length,
      devices: file.devices.length,
      nets: p.netCount,
    },
    branches: branchReports(p, worst, ohms),
    shunts: shuntReports(p, worst.coefficients, file.meters ?? []),
    loadFlow: loadFlowReport(p, file),
    faults: { greatest: faultReport(p, GREATEST), least: faultReport(p, LEAST) },
    breaking: breakingReport(p),
    drops: dropReports(p, ohms),
  }
}

function branchReports(p: Prepared, worst: EnvelopeResult, ohms: Float64Array): BranchReport[] {
  const resting = envelopes({ ...p, ...sourcesOff(p) })
  const guard = protection(p)
  const back = returns(p)
  return p.form.branches.map((b, e) => ({
    id: b.id,
    envelope: range(worst, e),
    ...(b.kind === 'conductor'
      ? { protection: { from: endReport(guard, e, 'from'), to: endReport(guard, e, 'to') } }
      : {}),
    ...(back.isReturn[e] === 1 ? { sustained: sustainedReport(back.sustained(e)) } : {}),
    worstDrop: dropOf(resting, e, ohms[e]!),
  }))
}

const range = (r: EnvelopeResult, e: number): readonly [Figure, Figure] | NotMade => {
  const reason = r.noAnswer.get(e)
  return reason ? { notChecked: reason } : [figure(r.min[e]!), figure(r.max[e]!)]
}

const dropOf = (r: EnvelopeResult, e: number, ohms: number): Figure | NotMade => {
  const reason = r.noAnswer.get(e)
  return reason ? { notChecked: reason } : figure(Math.max(-r.min[e]!, r.max[e]!) * ohms)
}

function sustainedReport(answer: Sustained): SustainedReport | NotMade {
  if ('notChecked' in answer) return gap(answer.notChecked)
  return { amps: figure(toNumber(answer.sustained)), sense: answer.sense }
}

function endReport(guard: ProtectionResult, e: number, end: 'from' | 'to'): EndReport {
  const answer: EndProtection = guard.end(e, end)
  if ('notChecked' in answer) return gap(answer.notChecked)
  if (answer.flow === 'unlimited') return answer as EndReport
  return { flow: tidy(answer.flow), cut: answer.cut.map((c) => ({ ...c, amps: tidy(c.amps) })) }
}

const gap = (g: ProtectionGap | ReturnGap): NotMade => {
  const { code, ...rest } = g
  return { notChecked: code, ...rest }
}

function loadFlowReport(p: Prepared, file: NetworkFile): LoadFlowReport | NotMade {
  const flow = loadFlow(
    p,
    new Map((file.operating ?? []).map(({ device, ...operation }) => [device, operation])),
  )
  if ('reason' in flow) return { notChecked: flow.reason, devices: flow.devices }
  return {
    steps: flow.steps,
    residualAmps: flow.residual,
    nodes: file.nodes.map((id, v) => ({
      id,
      volts: tidy(flow.voltage[v]!),
      reference: file.nodes[flow.reference[flow.group[v]!]!]!,
    })),
    branches: file.branches.map(({ id }, e) => ({ id, amps: tidy(flow.branchAmps[e]!) })),
    devices: file.devices.map(({ id }, d) => ({ id, amps: tidy(flow.deviceAmps[d]!) })),
  }
}

function faultReport(p: Prepared, c: FaultCase): FaultReport | NotMade {
  const faults = nodeFaults(p, c)
  if ('reason' in faults) return { notChecked: faults.reason, devices: faults.devices }
  return {
    nodes: p.form.nodes.map((id, v) => ({
      id,
      amps: Number.isNaN(faults.amps[v]!) ? null : figure(faults.amps[v]!),
    })),
  }
}

function breakingReport(p: Prepared): BreakingReport | NotMade {
  const answer = breakingCurrents(p, GREATEST)
  if ('reason' in answer) return { notChecked: answer.reason, devices: answer.devices }
  return {
    everyPair: answer.everyPair,
    devices: p.form.branches.flatMap((b, e) => {
      if (Number.isNaN(answer.amps[e]!)) return []
      const ends = [answer.at[e]!, answer.to[e]!].filter((v) => v !== -1)
      return [{ id: b.id, amps: figure(answer.amps[e]!), between: ends.map((v) => p.form.nodes[v]!) }]
    }),
  }
}

function dropReports(p: Prepared, ohms: Float64Array): NetworkReport['drops'] {
  const drop = loadDrops(p, ohms)
  const loads = drawing(p)
  const name = (d: number): string => p.form.devices[d]!.id
  return loads.map((d): DropReport | (NotMade & { device: string }) => {
    const answer = drop(d)
    if ('reason' in answer) return { device: name(d), notChecked: answer.reason }
    return {
      device: name(d),
      volts: figure(answer.volts),
      percent: figure((100 * answer.volts) / answer.ofVolts),
      supply: answer.supply.map(name),
      everySupply: answer.everySupply,
      loadsOff: loads.filter((other) => answer.witness[other] === 0).length,
      parts: answer.parts.map(({ branch, volts }) => ({
        branch: p.form.branches[branch]!.id,
        volts: tidy(volts),
      })),
    }
  })
}
