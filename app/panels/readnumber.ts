interface Limits {
  readonly min?: number
  readonly max?: number
  readonly whole?: boolean
}

/** Reads a typed number; a decimal comma will do. Empty is "not known", never zero. */
export function readNumber(
  text: string,
  { min, max, whole }: Limits,
): { readonly value: number | null; readonly wrong: string | null } {
  const trimmed = text.trim().replace(',', '.')
  if (trimmed === '') return { value: null, wrong: null }
  const value = Number(trimmed)
  if (!Number.isFinite(value)) return { value: null, wrong: 'Not a number' }
  if (whole && !Number.isInteger(value)) return { value: null, wrong: 'Whole numbers only' }
  if (min !== undefined && value < min) return { value: null, wrong: `At least ${min}` }
  if (max !== undefined && value > max) return { value: null, wrong: `At most ${max}` }
  return { value, wrong: null }
}
