import type { ConductorId, PartId } from '../../model/design'
import type { Unit } from '../../model/fields'

/** Why there is no figure: shown as "–", with the reason listed below the table. */
export interface NotKnown {
  readonly notKnown: string
}

/** Text, a figure in the unit of its column, or the reason why there is none. Empty text: does not apply. */
export type ScheduleCell = string | number | NotKnown

export interface Column<K extends string = string> {
  readonly key: K
  readonly title: string
  readonly unit: Unit
  readonly align: 'start' | 'end'
  /** Usual number of characters: a hint for widths. */
  readonly wide: number
  /** Figures are shown with so many decimals. Absent: as they are. */
  readonly decimals?: number
  /** Rows of one value stand together under it as a heading on paper. */
  readonly band?: true
  /** Drawn as a box to be ticked by hand: its cells are 'open', 'done', 'again' (`boxmarks.ts`), or empty for no box. */
  readonly box?: true
  /** On a narrow sheet it stands below that column, on a line of its own. */
  readonly below?: K
}

export interface ScheduleRow<K extends string = string> {
  /** Unique in the schedule, and the same for the same thing in the next version of the design. */
  readonly key: string
  /** What people call it: "W12", "F5:4". */
  readonly name: string
  readonly cells: Readonly<Record<K, ScheduleCell>>
  /** What the row speaks of, to be shown on the drawing. */
  readonly parts: readonly PartId[]
  readonly conductors: readonly ConductorId[]
}

/** A table made from a design and its answers. Never stored, never edited: it cannot be out of step with the drawing. */
export interface Schedule<K extends string = string> {
  /** Permanent: name of its file and of its page in a workbook. */
  readonly key: string
  readonly title: string
  readonly columns: readonly Column<K>[]
  readonly rows: readonly ScheduleRow<K>[]
  /** What the figures stand on: one sentence each. */
  readonly notes: readonly string[]
}

export const isNotKnown = (cell: ScheduleCell): cell is NotKnown => typeof cell === 'object'

/** What stands for a figure that is not known. */
export const DASH = '–'

/** "Length (m)". */
export const headed = ({ title, unit }: Column): string => (unit === '' ? title : `${title} (${unit})`)

/** A cell as it is printed. */
export function cellText(cell: ScheduleCell, { decimals }: Column): string {
  if (isNotKnown(cell)) return DASH
  if (typeof cell === 'string') return cell
  return decimals === undefined ? String(cell) : cell.toFixed(decimals)
}

/** A sum without the dust of binary fractions. */
export const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals))

/** Order of people: F2 before F10. The same on every machine. */
export function natural(a: string, b: string): number {
  const [p, q] = [pieces(a), pieces(b)]
  for (let i = 0; i < Math.min(p.length, q.length); i++) {
    const [x, y] = [p[i]!, q[i]!]
    if (x === y) continue
    const numbers = Number(x) - Number(y)
    if (!Number.isNaN(numbers) && numbers !== 0) return numbers
    return x < y ? -1 : 1
  }
  return p.length - q.length
}

const pieces = (text: string): string[] => text.match(/\d+|\D+/g) ?? []
