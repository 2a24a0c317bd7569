import type { ConductorId, PartId } from '../../model/design'

export const LABEL_KINDS = {
  conductor: 'Conductor markers',
  way: 'Fuse ways',
  part: 'Parts',
  warning: 'Warnings',
} as const
export type LabelKind = keyof typeof LABEL_KINDS

export type LabelSign = 'W001' | 'W012'

/** One label to be stuck on or shrunk over. */
export interface Label {
  /** Unique in the design. */
  readonly key: string
  readonly kind: LabelKind
  /** Where it goes: "at F5:4". */
  readonly place: string
  /** The first line is the one that is read from afar. */
  readonly lines: readonly string[]
  /** Warning sign beside the words, by its number in ISO 7010: W001 general, W012 electricity. */
  readonly sign?: LabelSign
  readonly parts: readonly PartId[]
  readonly conductors: readonly ConductorId[]
}
