/** One thing that is wrong with a file, in plain words: where, what was expected there, what was found. */
export interface Problem {
  /** "parts[3].values.ratingA"; "line 12" where the text itself is broken; empty for the file as a whole. */
  readonly path: string
  readonly expected: string
  readonly found: string
}

export type Path = readonly (string | number)[]

/** A person reads these; a list without end helps nobody. */
const MOST = 200

/** Collects problems, the first of each place, and counts what is beyond the number that is listed. */
export class ProblemList {
  private readonly listed = new Map<string, Problem>()
  private beyond = 0

  add(path: Path, expected: string, found: string): void {
    const place = pathText(path)
    if (this.listed.has(place)) return
    if (this.listed.size < MOST) this.listed.set(place, { path: place, expected, found })
    else this.beyond += 1
  }

  all(): readonly Problem[] {
    const problems = [...this.listed.values()]
    if (this.beyond > 0)
      problems.push({
        path: '',
        expected: 'a file without further problems',
        found: `${this.beyond} more problems`,
      })
    return problems
  }
}

/** ["parts", 3, "x"] to "parts[3].x". */
export function pathText(path: Path): string {
  let text = ''
  for (const step of path) {
    if (typeof step === 'number') text += `[${step}]`
    else text += text === '' ? step : `.${step}`
  }
  return cut(text, 120)
}

/** What stands at a place, in words: 'the text "abc"', 'the number 12', 'a list', 'nothing'. */
export function foundWords(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (value === null) return 'an empty value (null)'
  if (typeof value === 'string') return `the text "${cut(value, 40)}"`
  if (typeof value === 'number')
    return Number.isFinite(value) ? `the number ${value}` : 'a number beyond all bounds'
  if (typeof value === 'boolean') return value ? 'yes (true)' : 'no (false)'
  return Array.isArray(value) ? `a list of ${value.length}` : 'a record'
}

const cut = (text: string, most: number): string => (text.length > most ? `${text.slice(0, most)}…` : text)
