import type { Amps, MaybeUnlimited, Millimetres, Ohms, Volts, Watts } from '../units'
import type { Cell, Fields, Values, ValuesOf } from './fields'
import type { Mark } from './marks'

export type Side = 'left' | 'right' | 'up' | 'down'

/** What a terminal carries. 'any' takes its pole from what is joined to it (a bar, a fuse, a switch). */
export type Pole = 'positive' | 'negative' | 'any' | 'sense' | 'data' | 'mains'

export interface Terminal {
  /** Permanent key inside the kind; files refer to it. */
  readonly key: string
  /** Printed beside the terminal: "+", "30", "87a", "3". May be empty. */
  readonly mark: string
  /** In words, for messages and schedules: "way 3", "coil, switched". */
  readonly name: string
  readonly pole: Pole
  /** Where current enters in ordinary use; steers arranging and automatic returns, never a calculation. */
  readonly use: 'in' | 'out' | 'both'
  /** On the edge of the unturned symbol box, on the 2.5 mm grid. */
  readonly x: Millimetres
  readonly y: Millimetres
  readonly side: Side
  /** How many conductors it takes; absent: one lug is usual but nothing is known. */
  readonly takes?: number
  /** How conductors are fastened, a key of `tables/fittings.ts`; of a data port, what its lead needs (`tables/plugs.ts`). */
  readonly stud?: string
}

/** A branch between two terminals of one part. */
export interface PartBranch {
  readonly key: string
  readonly from: string
  readonly to: string
  readonly ohms: Ohms
  readonly kind: 'fuse' | 'contact' | 'shunt'
  /** null: not typed yet. */
  readonly ratingA: Amps | null
  /** What a person calls it: "way 3 (water pump)". */
  readonly name?: string
  /** Contacts of one changeover share a throw name; only one position of a throw is closed at a time. */
  readonly changeover?: { readonly name: string; readonly position: string }
  /** Shunt: what its reading is taken for. */
  readonly measures?: 'battery' | 'load'
  /** What works a contact; absent: a hand, a temperature, a level. */
  readonly workedBy?: WorkedBy
}

/** What works a contact: devices of the same part are named by key, points of measurement by terminal. */
export type WorkedBy =
  /** Closed while the coil is fed, or while it is not (a break contact). */
  | { readonly by: 'coil'; readonly coil: string; readonly closed: 'fed' | 'at-rest' }
  /** Stays as the last pulse left it. */
  | { readonly by: 'pulses'; readonly close: string; readonly open: string }
  /** Closes at a rising and opens at a falling voltage, the highest of what it measures; null: not typed yet. */
  | {
      readonly by: 'voltage'
      /** How it stands before anything moves it: loads stay on, batteries stay apart. */
      readonly usually: 'closed' | 'open'
      readonly at: readonly string[]
      readonly negative: string
      readonly closesV: Volts | null
      readonly opensV: Volts | null
    }

export type DeviceRole = 'battery' | 'source' | 'load' | 'two-way'

/** A device between a positive and a negative terminal of one part. Bounds as in the network form. */
export interface PartDevice {
  readonly key: string
  readonly positive: string
  readonly negative: string
  /** null: not known; the checks that need it are then not made. */
  readonly minA: MaybeUnlimited | null
  readonly maxA: MaybeUnlimited | null
  readonly sustainedFaultA: MaybeUnlimited | null
  readonly emfV?: Volts
  readonly internalOhms?: Ohms
  /** `internalOhms` is a maker's "not more than": good for the least fault current, never for the greatest. */
  readonly internalIsLimit?: boolean
  readonly role: DeviceRole
  readonly name?: string
  /** Load at full use: constant power drawn, W, or a resistance, Ω. Absent: a constant current of `minA`. */
  readonly atFullUse?: { readonly watts: Watts } | { readonly ohms: Ohms }
  /**
   * Output of a converter: key of the device of this part that draws its power, divided by the efficiency (0 to 1;
   * null: not known). `array`: it is fed by an array and passes on its power, or its current.
   */
  readonly suppliedBy?: {
    readonly device: string
    readonly efficiency: number | null
    readonly array?: 'power' | 'current'
  }
  /** Output that holds a voltage and gives what is drawn; null: not known. Absent: it gives a current. */
  readonly holdsV?: Volts | null
  /**
   * Source that charges: the voltage up to which it gives its full current, and the one it holds on a full battery;
   * null: not known. Without `floatV` it has no stages and holds the first.
   */
  readonly charging?: { readonly absorptionV: Volts | null; readonly floatV?: Volts | null }
  /** Battery: rest voltage by state of charge (0 to 1, rising); straight lines between. */
  readonly restCurve?: readonly (readonly [charge: number, volts: Volts])[]
  /** PV array at its point of most power in standard sun. */
  readonly array?: { readonly watts: Watts | null; readonly volts: Volts | null }
}

export interface Electrical {
  /** Groups of terminals that are one node (the studs of a bar). */
  readonly merges: readonly (readonly string[])[]
  readonly branches: readonly PartBranch[]
  readonly devices: readonly PartDevice[]
  /** True: the negative side hangs on the vehicle's frame; all such terminals join one node through `frameOhms`. */
  readonly frame?: { readonly terminal: string; readonly ohms: Ohms }
}

/** What an electrical model may know about the design it stands in. */
export interface ElectricalContext {
  /** Nominal system voltage, V. */
  readonly systemV: Volts
  /** Lowest voltage at which loads and inverters still run, V. */
  readonly lowestV: Volts
  /** Highest voltage of the system while charging, V. */
  readonly highestV: Volts
}

export interface SymbolDrawing {
  /** Box of the symbol, multiples of 2.5 mm. Terminals lie on its edges. Nothing is drawn outside it. */
  readonly w: Millimetres
  readonly h: Millimetres
  readonly marks: readonly Mark[]
}

export const SHELF_GROUPS = {
  stores: 'Stores',
  sources: 'Sources',
  converters: 'Converters',
  distribution: 'Distribution',
  protection: 'Protection',
  switching: 'Switching',
  measuring: 'Measuring',
  loads: 'Loads',
  control: 'Control',
  data: 'Data',
  mains: 'Mains boundary',
} as const
export type ShelfGroup = keyof typeof SHELF_GROUPS

/**
 * A part kind: everything the product knows about one kind of part, in one place.
 * `V` are its typed values; `kindOf` erases it so that kinds can stand in one list.
 */
export interface KindOf<F extends Fields> {
  /** Permanent key, written to files. Lower case with hyphens. */
  readonly key: string
  readonly title: string
  readonly group: ShelfGroup
  /** Class letter after IEC 81346-2, used for new designations: F1, K2, G1. */
  readonly letter: string
  /** One line for the shelf and the help. */
  readonly about: string
  /** Further words that find it when typing: "breaker", "MCB". */
  readonly words: readonly string[]
  readonly fields: F
  readonly terminals: (v: ValuesOf<F>) => readonly Terminal[]
  readonly electrical: (v: ValuesOf<F>, c: ElectricalContext) => Electrical
  /** Values of the fields whose role is 'result'; absent where there are none. */
  readonly results?: (v: ValuesOf<F>, c: ElectricalContext) => Readonly<Record<string, Cell>>
  readonly symbol: (v: ValuesOf<F>) => SymbolDrawing
  /** Ratings beside the symbol, one short line each: "100 A", "LiFePO4 200 Ah". */
  readonly caption: (v: ValuesOf<F>) => readonly string[]
}

/** A kind with its value type erased: what the rest of the engine handles. */
export interface Kind
  extends Omit<KindOf<Fields>, 'terminals' | 'electrical' | 'results' | 'symbol' | 'caption'> {
  readonly terminals: (v: Values) => readonly Terminal[]
  readonly electrical: (v: Values, c: ElectricalContext) => Electrical
  readonly results?: (v: Values, c: ElectricalContext) => Readonly<Record<string, Cell>>
  readonly symbol: (v: Values) => SymbolDrawing
  readonly caption: (v: Values) => readonly string[]
}

/** Declares a kind with typed values. The values given later are first completed by `complete` of values.ts. */
export function defineKind<F extends Fields>(kind: KindOf<F>): Kind {
  return kind as unknown as Kind
}

export const NOTHING: Electrical = { merges: [], branches: [], devices: [] }

/** What reading a file needs to know of kinds; undefined for a kind that this version does not know. */
export type KindLookup = (key: string) => Pick<Kind, 'fields' | 'terminals'> | undefined
