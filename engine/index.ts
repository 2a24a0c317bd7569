/** The door: every public name of the engine, written out. The app imports from here only. */

export type {
  Ampacity,
  Answer,
  Answers,
  BranchAnswer,
  Drop,
  DropAnswer,
  EndAnswer,
  Guard,
  Metered,
  MeterShare,
  NotChecked,
  ReadingError,
  RunAnswer,
  ShuntAnswer,
  Sustained,
  Verdict,
  WitnessLine,
  WorstCase,
} from './calc/answers'
export { type BandPlot, fuseBandPlot, type PlotPoint } from './calc/bandplot'
export type { NoEnvelope } from './calc/bounds'
export { type BreakingCurrents, breakingCurrents } from './calc/breaking'
export { type Entered, newEntry, newSigning } from './calc/commissioning/newentry'
export {
  type CommissioningRecord,
  type Counts,
  commissioningRecord,
  type EntryRecord,
  type GroupRecord,
  type ReadingRecord,
  type ReadingState,
  type StepRecord,
} from './calc/commissioning/record'
export { resultOf } from './calc/commissioning/result'
export type { Expected, Reading, StepCaution, StepGroup, TestStep } from './calc/commissioning/step'
export { commissioningSteps, sameSteps } from './calc/commissioning/steps'
export { type Comparison, type FieldChange, type ItemChanges, isUnchanged } from './calc/compare/changes'
export { compareDesigns } from './calc/compare/compare'
export { compareResults, type ResultChanges } from './calc/compare/results'
export { type Standing, standingOf } from './calc/compare/standing'
export { type LoadDrop, loadDrops, type NoDrop, sourcesOff } from './calc/drop'
export { type Envelope, type EnvelopeResult, envelopes } from './calc/envelope'
export { type FaultFlow, faultFlows, type NodeFaults, nodeFaults } from './calc/fault'
export type { Clearing, DeviceFault, EndFault, FaultAnswers, StartAnswer } from './calc/faultanswers'
export { type FaultCase, GREATEST, LEAST, type NoFault } from './calc/faultsystem'
export type { BranchKind, NetworkBranch, NetworkDevice, NetworkForm } from './calc/form'
export { type LoadFlow, loadFlow, type NoLoadFlow } from './calc/loadflow'
export { type MeterAnswer, type MeterQuestion, type MeterRole, meter } from './calc/meters'
export type { MeterStatement, NetworkFile } from './calc/networkfile'
export { operate } from './calc/operate'
export { carriedOver, changed, type OperatingChange } from './calc/operating/change'
export { CHARGE_STAGES, type ChargeStage } from './calc/operating/charging'
export { type Control, controlsOf } from './calc/operating/control'
export type {
  DevicePoint,
  NoOperatingPoint,
  OperatingNote,
  OperatingNoteKind,
  OperatingPoint,
  OperatingState,
  PowerBalance,
  ShuntPoint,
} from './calc/operating/state'
export { usualState } from './calc/operating/usual'
export { workedParts } from './calc/operating/worked'
export type { Operation, Operations } from './calc/operation'
export { type Prepared, prepare } from './calc/prepare'
export {
  type CutMember,
  type EndProtection,
  type ProtectionGap,
  type ProtectionResult,
  protection,
} from './calc/protection'
export { type NetworkReadResult, readNetwork } from './calc/readform'
export { deviceCurrents, type ReadingErrors, readingErrors } from './calc/reading'
export { networkReport } from './calc/report'
export type { NetworkReport, NotMade } from './calc/reportshape'
export { resultsOf } from './calc/resultsof'
export { type ReturnsResult, returns } from './calc/returns'
export type { DeviceNature, Share } from './calc/share'
export { sizeInPart } from './calc/sizing/sizeinpart'
export { sizeIt } from './calc/sizing/sizeit'
export type {
  HeatNeed,
  Kept,
  NoSize,
  RatingChoice,
  RatingReason,
  RunChoice,
  Sized,
  SizedInPart,
  SizeReason,
  Sizing,
  SizingChoice,
  SizingScope,
} from './calc/sizing/sizing'
export { type BarThrough, barThrough, type NoBarThrough } from './calc/through'
export type { DeviceCurrent, GreatestCurrent, Witness } from './calc/witness'
export { addPartEdit } from './edit/addpart'
export { type Alignment, alignEdit, boundsOf, distributeEdit } from './edit/align'
export { apply } from './edit/apply'
export {
  builtEdit,
  deviceEdit,
  photoEdit,
  statedTorque,
  tickEdit,
  torqueEdit,
} from './edit/bench'
export { type BenchConflict, type Brought, bringFrom } from './edit/benchbring'
export {
  asBuilt,
  type BuiltNow,
  builtFacts,
  conductorAsBuilt,
  type Difference,
  differencesOf,
  type Unsettled,
  unsettledOf,
} from './edit/benchfacts'
export { type KeptAside, keptAside, recordOf } from './edit/benchrecord'
export type { SinceThen, StepAnswer } from './edit/benchsteps'
export { takeOverEdit } from './edit/benchtake'
export { canJoin, canReconnect, type JoinOptions } from './edit/canjoin'
export { type Clip, copyOf, duplicateEdit, pasteEdit, type Selection } from './edit/clip'
export { designIn } from './edit/designin'
export type { ConductorChange, Edit, EditOf, EditResult, NoteLine, PartChange, Refusal } from './edit/edit'
export { GRID, snap } from './edit/grid'
export { movedParagraph, newParagraph } from './edit/handover'
export { type History, historyOf, push, redo, type Step, settle, undo } from './edit/history'
export { type Insertion, insertEdit } from './edit/insert'
export { type JoinEdit, joinEdit } from './edit/joinedit'
export { newOwnConductor } from './edit/ownconductors'
export { removeEdit } from './edit/removal'
export { sameForChecks } from './edit/sameforchecks'
export { KINDS, kindOf } from './kinds/all'
export { issuedDesign } from './kinds/issued'
export { boxOf, symbolOf, terminalsOf, workedSymbolOf } from './kinds/place'
export { readDesign } from './kinds/readdesign'
export {
  BENCH_BOUNDS,
  BENCH_STEPS,
  type Bench,
  type BenchStep,
  type Built,
  type BuiltFact,
  type BuiltWhat,
  type Photo,
  type Stamp,
} from './model/bench'
export { mergeBench } from './model/benchmerge'
export { makingOf } from './model/buying'
export type { TestEntry, TestRecord, TestSigning } from './model/commissioning'
export type {
  Accepted,
  Conductor,
  ConductorId,
  Design,
  Part,
  PartId,
  Place,
  Revision,
  Settings,
  SheetText,
  SystemVoltage,
  TerminalRef,
  Turn,
  Zone,
} from './model/design'
export { DESIGN_FIELDS } from './model/designfields'
export { drawingNotes } from './model/drawingnotes'
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
export type { Handover, OwnParagraph } from './model/handover'
export type { Kind, Pole, ShelfGroup, Side, SymbolDrawing, Terminal } from './model/kind'
export { SHELF_GROUPS } from './model/kind'
export { conductorById, conductorsAt, partById } from './model/lookup'
export type { ArcMark, CircleMark, Ink, LineMark, Mark, Pen, TextMark, XY } from './model/marks'
export { nextDesignation, nextId, nextNumber } from './model/naming'
export { newConductor, newDesign } from './model/newdesign'
export { OWN_CONDUCTOR_TABLE, OWN_RULE_FIELDS } from './model/ownfields'
export type { Problem } from './model/problems'
export type { ReadResult } from './model/read'
export { nextRevision, withRevisionsOf } from './model/revision'
export { ruleSetOf } from './model/rules'
export { RUN_FIELDS, withOwnSizes } from './model/runfields'
export { sizeIn, sizesIn } from './model/sizes'
export { complete, initialRow, initialValues } from './model/values'
export { writeDesign } from './model/write'
export { type AcceptedFinding, sortAccepted } from './rules/accepted'
export { lookedFor } from './rules/all'
export { type Analysed, analyse, analyser } from './rules/analyse'
export { type BuiltAnalysed, builtFindings } from './rules/builtfindings'
export { isThinner } from './rules/builtotherwise'
export type { Figure, Finding, Level } from './rules/finding'
export { arrangeEdit, arrangeLinksEdit } from './sheets/arrangedesign'
export { BAND_PLOT_MM, bandPlotMarks } from './sheets/bandplot'
export { benchList } from './sheets/bench/benchlist'
export { type BenchCard, type BenchEnd, benchCards } from './sheets/bench/card'
export { BENCH_ORDERS, type BenchGroup, type BenchOrder, benchGroups } from './sheets/bench/order'
export {
  type BenchProgress,
  benchProgress,
  cardsNumbered,
  isFinished,
  nextCard,
} from './sheets/bench/progress'
export { CAUTIONS, LAST_WORD } from './sheets/cautions'
export { type AnalysedState, allChangeRows, analysedState } from './sheets/compared/changelist'
export { sceneMarks } from './sheets/compared/scenemarks'
export { handoverSheets } from './sheets/handover/sheets'
export { LABEL_KINDS, type Label, type LabelKind, type LabelSign } from './sheets/labelsheets/label'
export { labelsOf } from './sheets/labelsheets/labels'
export { type LabelSheetOptions, labelSheets } from './sheets/labelsheets/labelsheets'
export { labelTable } from './sheets/labelsheets/labeltable'
export { type LostSigns, lostSigns } from './sheets/lostsigns'
export { sceneOf } from './sheets/makescene'
export { printable, typeSize, widthOf } from './sheets/measure'
export { outlineMarks } from './sheets/outlinemarks'
export { assemble, type Pack } from './sheets/packs/assemble'
export type { Bookmark } from './sheets/packs/bookmarks'
export { type MadeSection, makeSection } from './sheets/packs/chapters'
export { sectionsNamed, usualContents } from './sheets/packs/contents'
export {
  PACK_READERS,
  type PackContext,
  type PackReader,
  type PackSection,
} from './sheets/packs/section'
export { PACK_SECTIONS } from './sheets/packs/sections'
export type { PaperSize } from './sheets/paper'
export { bandPlotSheets, type DevicePlot, devicePlots, type PlotSheetOptions } from './sheets/plotsheets'
export { reroutedWays } from './sheets/rerouted'
export { type RevisionRow, revisionRows } from './sheets/revisions'
export { tickAt } from './sheets/runmarks'
export type {
  Scene,
  SceneConductor,
  SceneLabel,
  SceneOutline,
  ScenePart,
  SceneText,
  SceneView,
} from './sheets/scene'
export { SCHEDULES, type ScheduleKind, schedulesOf } from './sheets/schedules/all'
export { csvOf } from './sheets/schedules/csv'
export { type Missing, missingIn, missingWords } from './sheets/schedules/missing'
export type { PageForm } from './sheets/schedules/page'
export {
  type Column,
  cellText,
  headed,
  isNotKnown,
  type NotKnown,
  natural,
  type Schedule,
  type ScheduleCell,
  type ScheduleRow,
} from './sheets/schedules/schedule'
export { type ScheduleSheetOptions, scheduleSheets } from './sheets/schedules/schedulesheets'
export { type WorkbookPart, workbookParts } from './sheets/schedules/workbook'
export { type SchematicOptions, schematicSheets } from './sheets/schematic'
export type { Sheet, SheetLink } from './sheets/sheet'
export { sceneText, textsIn } from './sheets/sheettexts'
export { symbolSheets } from './sheets/symbolsheets'
export { moveZoneEdit, outlineEdit, resizeZoneEdit } from './sheets/zonedesign'
export { SOURCES, type Source, type SourceKey, type SourceStatus, sourceOf } from './sources'
export { type AmpacityAnswer, type AmpacitySpec, ampacityOf } from './tables/ampacity'
export { COLOURS, colourName, isColour } from './tables/colours'
export type { Figured } from './tables/figure'
export { type BandGate, clearsBy, type FuseBand, fuseBand, holdsAtLeast } from './tables/fuseband'
export { type FuseForm, fuseColour, nextRating, RATINGS } from './tables/fuseratings'
export { clearsWithin, FUSE_TIMES, type FuseTimes, holdsFor, type TimeGate } from './tables/fusetimes'
export { LABEL_STOCKS, type LabelStock, ownStock, sleeveFor } from './tables/labelstock'
export { ARTICLE_BOUNDS, type Article, MAKING_BOUNDS, type Making, USUAL_MAKING } from './tables/making'
export { OWN_BOUNDS, OWN_RULES, type OwnRules } from './tables/ownrules'
export { OWN_CONDUCTOR_BOUNDS, type OwnConductor } from './tables/ownsizes'
export { resistancePerMetre } from './tables/resistance'
export { type CircuitClass, RULE_SETS, type RuleSet, ruleSetByKey } from './tables/rulesets'
export { SIZES, type Size, type SizeSeries, sizeByKey, sizesOf } from './tables/sizes'
export { SURROUNDS, type Surround, surroundOf } from './tables/surround'
export { withstandK, withstandSeconds, withstandSection } from './tables/withstand'
export type { MaybeUnlimited } from './units'
export { BUILT_WORDS, builtWords, STEP_WORDS } from './words/bench'
export { broughtWords, conflictWords, deviceName, saidWords } from './words/benchbring'
export { breakingWords } from './words/breaking'
export { CHANGE_GROUPS, CHANGE_MARKS, CHANGE_WORDS, type ChangeKind, type ChangeRow } from './words/changerow'
export { changeRows } from './words/changerows'
export { builtOtherwiseWords } from './words/commissioning/asbuilt'
export { STEP_CAUTIONS } from './words/commissioning/cautions'
export { GROUP_WORDS } from './words/commissioning/groups'
export { INSTRUMENT_WORDS, probeWords, readingWords } from './words/commissioning/readings'
export { monitorWords, settingWords } from './words/commissioning/setting'
export {
  countsWords,
  entryNotes,
  expectedWords,
  foundWords,
  momentWords,
  STATE_WORDS,
  signedWords,
  signingWords,
  whoWhen,
} from './words/commissioning/states'
export { stepWords } from './words/commissioning/steps'
export { type CommissioningSummary, commissioningSummary } from './words/commissioning/summary'
export { acceptedWords, LEVEL_WORDS, sentence } from './words/findings'
export type {
  Book,
  Chapter,
  Cover,
  FuseLine,
  PictureBand,
  PictureWords,
  Piece,
} from './words/handover/book'
export { CHAPTERS, type ChapterKey } from './words/handover/language'
export { HANDOVER_LANGUAGES, handoverWords } from './words/handover/languages'
export { handoverBook } from './words/handover/make'
export { conductorName, figure, listed, partName } from './words/names'
export { noOperatingWords, operatingNoteWords } from './words/operate'
export { resultRows } from './words/resultrows'
export type { Sentence } from './words/sentence'
export { whyShortCircuit } from './words/shortcircuit'
export { choiceWords, copperWords, keptWords, noSizeWords, sizeName, whyChosen } from './words/sizing'
export { sourceWords } from './words/sourced'
export { type StandingWords, standingWords } from './words/standing'
export {
  amountWords,
  factorWords,
  guardWords,
  meteredWords,
  RETURN_JUDGED,
  readingErrorWords,
  verdictWords,
  whyAmpacity,
  whyCurrent,
  whyNot,
  whyProtected,
} from './words/why'
