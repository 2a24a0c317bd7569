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
export type { ConductorChange, Edit, EditResult, PartChange, Refusal } from './edit/edit'
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
export type { ArcMark, CircleMark, Ink, LineMark, Mark, Pen, TextMark, XY } from './model/marks'
export type { Figure, Finding, Level } from './rules/finding'
export type { Scene, SceneConductor, SceneLabel, ScenePart, SceneView } from './sheets/scene'
