/** The door: every public name of the engine, written out. The app imports from here only. */

export type {
  Ampacity,
  Answer,
  Answers,
  BranchAnswer,
  EndAnswer,
  Guard,
  Metered,
  NotChecked,
  ReadingError,
  RunAnswer,
  ShuntAnswer,
  Verdict,
  WitnessLine,
  WorstCase,
} from './calc/answers'
export type { BranchKind, NetworkBranch, NetworkDevice, NetworkForm } from './calc/form'
export { apply } from './edit/apply'
export { canJoin } from './edit/canjoin'
export type { ConductorChange, Edit, EditResult, PartChange, Refusal } from './edit/edit'
export { KINDS, kindOf } from './kinds/all'
export { boxOf, symbolOf, terminalsOf } from './kinds/place'
export type {
  Conductor,
  ConductorId,
  Design,
  Part,
  PartId,
  Settings,
  SystemVoltage,
  TerminalRef,
  Turn,
} from './model/design'
export type {
  Cell,
  CellField,
  ChoiceField,
  Field,
  Fields,
  FlagField,
  NumberField,
  Row,
  RowsField,
  TextField,
  Unit,
  Value,
  Values,
} from './model/fields'
export type { Kind, Pole, ShelfGroup, Side, SymbolDrawing, Terminal } from './model/kind'
export { SHELF_GROUPS } from './model/kind'
export { conductorById, conductorsAt, partById } from './model/lookup'
export type { ArcMark, CircleMark, Ink, LineMark, Mark, Pen, TextMark, XY } from './model/marks'
export { nextDesignation, nextId, nextNumber } from './model/naming'
export { newConductor, newDesign } from './model/newdesign'
export type { Problem } from './model/problems'
export { type ReadResult, readDesign } from './model/read'
export { complete, initialValues } from './model/values'
export { writeDesign } from './model/write'
export type { Figure, Finding, Level } from './rules/finding'
export type { Scene, SceneConductor, SceneLabel, ScenePart, SceneView } from './sheets/scene'
export { type Source, SOURCES, sourceOf } from './sources'
export { COLOURS, colourName } from './tables/colours'
export { RULE_SETS, type RuleSet, ruleSetByKey } from './tables/rulesets'
export { SIZES, type Size, sizeByKey } from './tables/sizes'
export type { MaybeUnlimited } from './units'
export { LEVEL_WORDS, sentence } from './words/findings'
export { conductorName, figure, listed, partName } from './words/names'
export type { Sentence } from './words/sentence'
export {
  amountWords,
  guardWords,
  meteredWords,
  readingErrorWords,
  shareWords,
  verdictWords,
  whyAmpacity,
  whyCurrent,
  whyNot,
  whyProtected,
} from './words/why'
