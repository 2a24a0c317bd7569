import type { Blocks } from '../math/blocks'
import { type Column, condense, type Origin } from '../math/condense'
import type { MeshCurrents } from '../math/meshcurrents'
import { type LinearAnswer, simplex } from '../math/simplex'
import type { BridgeFlow, Sense } from './bridgeflow'
import { type ByNet, together } from './netgraph'
import type { Prepared } from './prepare'
import type { CutMember } from './protection'

/** Programs with a larger tableau than this are not tried. */
const MOST_ENTRIES = 4_000_000

export type ProgramGap =
  /** Too many limits bear on one meshed part. */
  | { readonly code: 'too-large'; readonly limits: number }
  | { readonly code: 'no-convergence' }
  /** Resistances of one meshed part lie further apart than the arithmetic can hold. */
  | { readonly code: 'resistance-spread' }

/**
 * Greatest current through a conductor of a meshed part in any state that blows no fuse, at the given
 * resistances: a linear program over the device currents (no lower bound, at most the fault current), each fuse
 * within ± its rating, one balance a net.
 */
export interface MeshReturns {
  flow(conductor: number, sense: Sense, missing: number): BridgeFlow | { readonly gap: ProgramGap }
}

/** A condensed program, ready for one objective after another. */
interface Program {
  readonly columns: readonly Column[]
  readonly limits: readonly number[]
  /** Where each column comes into the block. */
  readonly places: readonly { column: number; joint: number; value: number }[]
  readonly solve: (objective: Float64Array) => LinearAnswer
}

/**
 * For the conductors of one net. Rows are numbered: fuses by branch, then balances by net, then the places at
 * which devices come into the net's blocks, which carry the objectives. The program is condensed once for the
 * net and once more for each block, where devices that come in at one place count together.
 */
export function meshReturns(
  p: Prepared,
  blocks: Blocks,
  mesh: MeshCurrents,
  content: ByNet,
  net: number,
): MeshReturns {
  const m = p.graph.edgeCount
  const firstJoint = m + p.netCount
  const { nets, devices } = together(p, content, net, () => false)
  const fusesIn = new Map<number, number[]>()
  let spread = false
  const shares = new Map<number, ReadonlyMap<number, number>>()
  for (const k of nets)
    for (const e of content.branches[k]!) {
      const block = blocks.of[e]!
      if (p.isFuse[e] === 0 || block < 0) continue
      const known = mesh.shares(e)
      if (!known) spread = true
      else shares.set(e, known)
      const list = fusesIn.get(block)
      if (list) list.push(e)
      else fusesIn.set(block, [e])
    }
  const columns = spread ? [] : Array.from(devices, column)
  /** Condensed once for the net: with all places, and without. */
  const perNet = new Map<number, readonly { whole: Column; bare: Column }[]>()
  const perBlock = new Map<string, Program | { readonly gap: ProgramGap }>()

  return {
    flow(conductor, sense, missing) {
      const block = blocks.of[conductor]!
      const share = mesh.shares(conductor)
      if (spread || !share) return { gap: { code: 'resistance-spread' } }
      const program = programOf(block, missing)
      if ('gap' in program) return program
      const sign = sense === 'forward' ? 1 : -1
      const objective = new Float64Array(program.columns.length + program.limits.length)
      for (const { column: j, joint, value } of program.places)
        objective[j]! += sign * value * (share.get(joint) ?? 0)
      const answer = program.solve(objective)
      if (answer.status === 'unbounded') return { amps: Number.POSITIVE_INFINITY, limiting: () => [] }
      if (answer.status !== 'optimal') return { gap: { code: 'no-convergence' } }
      return { amps: Math.max(0, answer.value), limiting: () => limiting(program, answer) }
    },
  }

  /** 1 A of the device in every row that it moves. */
  function column(device: number): Column {
    const rows = new Map<number, number>()
    const add = (row: number, value: number): void => {
      const sum = (rows.get(row) ?? 0) + value
      if (sum === 0) rows.delete(row)
      else rows.set(row, sum)
    }
    for (const [node, amps] of [
      [p.positive[device]!, 1],
      [p.negative[device]!, -1],
    ] as const) {
      add(m + p.net[node]!, amps)
      mesh.bridges(node, (edge, sign) => {
        if (p.isFuse[edge] === 1) add(edge, sign * amps)
      })
      mesh.joints(node, (block, joint) => {
        if (p.net[node] === net) add(firstJoint + joint, amps)
        for (const fuse of fusesIn.get(block) ?? []) add(fuse, amps * (shares.get(fuse)!.get(joint) ?? 0))
      })
    }
    for (const [row, value] of rows) if (Math.abs(value) < 1e-12) rows.delete(row)
    return {
      rows,
      lower: Number.NEGATIVE_INFINITY,
      upper: p.fault[device]!,
      lowerFrom: { own: device },
      upperFrom: { own: device },
    }
  }

  function programOf(block: number, missing: number): Program | { readonly gap: ProgramGap } {
    const key = `${block} ${missing}`
    const known = perBlock.get(key)
    if (known) return known
    const limit = (row: number): number =>
      row >= firstJoint
        ? Number.POSITIVE_INFINITY
        : row >= m
          ? 0
          : p.rating[row]! >= 0
            ? p.rating[row]!
            : missing
    let first = perNet.get(missing)
    if (!first) {
      const folded = condense(columns, limit, (row) => row >= firstJoint)
      first = folded.map((c) => ({ whole: c, bare: restrictedTo(c, (row) => row < firstJoint) }))
      perNet.set(missing, first)
    }
    const isHere = (row: number): boolean => row >= firstJoint && blocks.above[row - firstJoint] === block
    const here = first.map(({ whole, bare }) =>
      [...whole.rows.keys()].some(isHere)
        ? restrictedTo(whole, (row) => row < firstJoint || isHere(row))
        : bare,
    )
    const program = programFrom(condense(here, limit, isHere), limit, firstJoint)
    perBlock.set(key, program)
    return program
  }

  function limiting(program: Program, answer: LinearAnswer & { status: 'optimal' }): CutMember[] {
    const found = new Map<string, CutMember>()
    const add = (member: CutMember): void => {
      if (member.amps > 0 && member.amps < Number.POSITIVE_INFINITY)
        found.set(`${member.kind} ${member.id}`, member)
    }
    const fuse = (row: number): void => {
      if (row < m && p.rating[row]! >= 0)
        add({ kind: 'fuse', id: p.form.branches[row]!.id, amps: p.rating[row]! })
    }
    const trace = (origin: Origin, side: 'lowerFrom' | 'upperFrom'): void => {
      if ('row' in origin) fuse(origin.row)
      else if ('parts' in origin) for (const c of origin.parts) trace(c[side], side)
      else add({ kind: 'source', id: p.form.devices[origin.own]!.id, amps: p.fault[origin.own]! })
    }
    program.columns.forEach((c, j) => {
      if (answer.reduced[j]! > 1e-9) trace(c.upperFrom, 'upperFrom')
      else if (answer.reduced[j]! < -1e-9) trace(c.lowerFrom, 'lowerFrom')
    })
    program.limits.forEach((row, i) => {
      if (Math.abs(answer.reduced[program.columns.length + i]!) > 1e-9) fuse(row)
    })
    return [...found.values()]
  }
}

function restrictedTo(c: Column, keep: (row: number) => boolean): Column {
  return { ...c, rows: new Map([...c.rows].filter(([row]) => keep(row))) }
}

/** The condensed columns as a program; every limit that still binds more than one of them gets a column of its own. Columns held at 0 drop out. */
function programFrom(
  all: readonly Column[],
  limit: (row: number) => number,
  firstJoint: number,
): Program | { readonly gap: ProgramGap } {
  const columns = all.filter((c) => c.lower < c.upper)
  const rows = [...new Set(columns.flatMap((c) => [...c.rows.keys()]))].filter(
    (row) => row < firstJoint && limit(row) < Number.POSITIVE_INFINITY,
  )
  const limits = rows.filter((row) => limit(row) > 0)
  const columnCount = columns.length + limits.length
  if (rows.length * (columnCount + rows.length) > MOST_ENTRIES)
    return { gap: { code: 'too-large', limits: rows.length } }
  const place = new Map(rows.map((row, i) => [row, i]))
  const matrix = new Float64Array(rows.length * columnCount)
  columns.forEach((c, j) => {
    for (const [row, value] of c.rows) {
      const i = place.get(row)
      if (i !== undefined) matrix[i * columnCount + j] = value
    }
  })
  limits.forEach((row, i) => {
    matrix[place.get(row)! * columnCount + columns.length + i] = -1
  })
  const solve = simplex({
    rowCount: rows.length,
    columnCount,
    matrix,
    rhs: new Float64Array(rows.length),
    lower: Float64Array.from([...columns.map((c) => c.lower), ...limits.map((row) => -limit(row))]),
    upper: Float64Array.from([...columns.map((c) => c.upper), ...limits.map(limit)]),
  })
  const places = columns.flatMap((c, column) =>
    [...c.rows].flatMap(([row, value]) =>
      row >= firstJoint ? [{ column, joint: row - firstJoint, value }] : [],
    ),
  )
  return { columns, limits, places, solve }
}
