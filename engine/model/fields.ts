/**
 * Fields: how a part kind, a conductor and the design settings declare their data. One declaration feeds the
 * card on screen, the file reader, the help and the legend on paper.
 */

export type Unit =
  | ''
  | 'A'
  | 'V'
  | 'W'
  | 'Ω'
  | 'mΩ'
  | 'Ah'
  | 'Wh'
  | 'm'
  | 'mm'
  | 'mm²'
  | '°C'
  | '%'
  | 's'
  | 'mV'
  | 'h'
  | 'kA'
  | '%/K'
  | '×'
  | 'L'
  | 'kg'

interface Common {
  /** Short label on the card, sentence case, no unit. */
  readonly label: string
  /** One plain sentence for help. */
  readonly about: string
  /** An input is typed by a person; a result is computed from the inputs and only shown. Default: input. */
  readonly role?: 'input' | 'result'
  /** Left empty, some check cannot be made: the check is then reported as not checked, never as passed. */
  readonly required?: boolean
  /** Fields of one group stand together on the card. Fields without one stand first. */
  readonly group?: string
}

export interface NumberField extends Common {
  readonly type: 'number'
  readonly unit: Unit
  /** null: empty until typed. */
  readonly initial: number | null
  readonly min?: number
  readonly max?: number
  readonly whole?: boolean
  /** Standard values offered beside free typing, e.g. fuse ratings. */
  readonly standard?: readonly number[]
}

export interface TextField extends Common {
  readonly type: 'text'
  readonly initial: string
  readonly lines?: number
  /** ISO 8601: the card offers a calendar. */
  readonly form?: 'date'
}

export interface ChoiceField<K extends string = string> extends Common {
  readonly type: 'choice'
  /** Stored value to what is shown. */
  readonly options: Readonly<Record<K, string>>
  readonly initial: K
}

export interface FlagField extends Common {
  readonly type: 'flag'
  readonly initial: boolean
}

export type CellField = NumberField | TextField | ChoiceField | FlagField

/** A small table inside a part: the ways of a fuse block, the joins of a bar. */
export interface RowsField<
  C extends Readonly<Record<string, CellField>> = Readonly<Record<string, CellField>>,
> extends Common {
  readonly type: 'rows'
  readonly columns: C
  readonly initial: number
  readonly min: number
  readonly max: number
  /** Name of one row: "way", "stud". */
  readonly each: string
}

export type Field = CellField | RowsField
export type Fields = Readonly<Record<string, Field>>

/** What a field holds. A number that is not known is null; it is never NaN and never a stand-in. */
export type Cell = number | string | boolean | null
export type Row = Readonly<Record<string, Cell>>
export type Value = Cell | readonly Row[]
export type Values = Readonly<Record<string, Value>>

export type ValueOf<F> = F extends NumberField
  ? number | null
  : F extends TextField
    ? string
    : F extends ChoiceField<infer K>
      ? K
      : F extends FlagField
        ? boolean
        : F extends RowsField<infer C>
          ? readonly { readonly [P in keyof C]: ValueOf<C[P]> }[]
          : never

/** The typed values of a set of fields, e.g. `ValuesOf<typeof fields>`. */
export type ValuesOf<F extends Fields> = { readonly [P in keyof F]: ValueOf<F[P]> }
