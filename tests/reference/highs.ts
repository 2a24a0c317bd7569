import loadHighs from 'highs'

/** The general-purpose solver HiGHS (npm package highs), as the outside judge of linear and integer programs. */
const highs = await loadHighs()

export interface LpRow {
  readonly lower: number
  readonly upper: number
  readonly columns: readonly number[]
  readonly values: readonly number[]
}

/** lower ≤ A·x ≤ upper with bounds on x; ±Infinity where there is none. */
export interface Lp {
  readonly sense: 'max' | 'min'
  /** One cost a column. */
  readonly objective: ArrayLike<number>
  readonly rows: readonly LpRow[]
  /** Lowest and highest value of each column. */
  readonly bounds: readonly (readonly [number, number])[]
  /** Columns that take whole numbers only. */
  readonly whole?: readonly number[]
}

export type LpAnswer =
  | { readonly status: 'optimal'; readonly value: number; readonly x: Float64Array }
  | { readonly status: 'unbounded' }
  | { readonly status: 'infeasible' }

/** Throws where the solver ends without a verdict. */
export function solveLp(lp: Lp): LpAnswer {
  const kept = keepLp(lp)
  try {
    return kept.optimise(lp.sense, lp.objective)
  } finally {
    kept.dispose()
  }
}

/** One program for many objectives: the solver keeps its last basis. Dispose of it at the end. */
export interface KeptLp {
  optimise(sense: 'max' | 'min', objective: ArrayLike<number>): LpAnswer
  dispose(): void
}

export function keepLp(lp: Omit<Lp, 'sense' | 'objective'>): KeptLp {
  const n = lp.bounds.length
  const finite = (x: number): number =>
    x === Number.POSITIVE_INFINITY ? highs.infinity : x === Number.NEGATIVE_INFINITY ? -highs.infinity : x
  const starts = new Int32Array(lp.rows.length + 1)
  lp.rows.forEach((r, i) => {
    starts[i + 1] = starts[i]! + r.columns.length
  })
  const whole = new Set(lp.whole)
  const { integer, continuous } = highs.constants.variableType
  const model = highs.createModel({
    numCols: n,
    numRows: lp.rows.length,
    colCost: new Float64Array(n),
    colLower: Float64Array.from(lp.bounds, (b) => finite(b[0])),
    colUpper: Float64Array.from(lp.bounds, (b) => finite(b[1])),
    rowLower: Float64Array.from(lp.rows, (r) => finite(r.lower)),
    rowUpper: Float64Array.from(lp.rows, (r) => finite(r.upper)),
    matrix: {
      format: 'csr',
      numCols: n,
      numRows: lp.rows.length,
      starts,
      indices: Int32Array.from(lp.rows.flatMap((r) => [...r.columns])),
      values: Float64Array.from(lp.rows.flatMap((r) => [...r.values])),
    },
    ...(whole.size > 0
      ? { integrality: lp.bounds.map((_, j) => (whole.has(j) ? integer : continuous)) }
      : {}),
  })
  const exact = {
    presolve: 'choose',
    primal_feasibility_tolerance: 1e-9,
    dual_feasibility_tolerance: 1e-9,
  }
  model.options.set({
    ...exact,
    output_flag: false,
    mip_rel_gap: 0,
    mip_abs_gap: 1e-9,
    small_matrix_value: 1e-12,
  })
  const status = highs.constants.modelStatus
  const decided = (verdict: number): boolean =>
    verdict === status.optimal || verdict === status.unbounded || verdict === status.infeasible
  const attempt = (): number => {
    try {
      model.run()
      return model.getModelStatus()
    } catch {
      return status.solveError
    }
  }
  return {
    optimise(sense, objective) {
      // Always minimised: one sense, so that the last basis stays of use.
      const sign = sense === 'max' ? -1 : 1
      model.changeColsCost(
        { kind: 'range', from: 0, to: n - 1 },
        Float64Array.from(objective, (c) => sign * c),
      )
      let verdict = attempt()
      // A cold start without presolve tells unbounded from infeasible, and ends most runs that found no verdict.
      for (const tolerance of [1e-9, 1e-8, 1e-7]) {
        if (decided(verdict)) break
        model.clearSolver()
        model.options.set({
          presolve: 'off',
          primal_feasibility_tolerance: tolerance,
          dual_feasibility_tolerance: tolerance,
        })
        verdict = attempt()
      }
      model.options.set(exact)
      if (verdict === status.optimal)
        return {
          status: 'optimal',
          value: sign * model.getObjectiveValue(),
          x: Float64Array.from(model.getSolution().colValue),
        }
      if (verdict === status.unbounded) return { status: 'unbounded' }
      if (verdict === status.infeasible) return { status: 'infeasible' }
      throw new Error(`HiGHS ended with model status ${verdict}`)
    },
    dispose: () => model.dispose(),
  }
}
