import { conductorById, type Selection } from '../../engine'
import { saveToDisk } from '../files/session'
import { LENSES, type Lens } from '../lenses/lens'
import { stepStage } from '../stages/step'
import { toggleTrying } from '../tryit/trial'
import { arrangeAll, arrangeSelected, followSingleLine, nothingToFollow } from './arranging'
import { copy, cut, duplicate, pasteHere, removeSelected } from './clip'
import { usePointer } from './hand'
import { lineUp, spread } from './lineup'
import { nudge } from './nudge'
import { outlineSelected, stretchZone, writeHere } from './onsheet'
import { redo, undo, useOpen } from './open'
import { heldByHand, runFreely } from './runfreely'
import { say } from './say'
import { stepFinding } from './stepfinding'
import { mirrorSelected, turnSelected } from './turning'
import {
  clearSelection,
  lookAt,
  lookAtAll,
  select,
  setOverlay,
  setStage,
  setView,
  turnLens,
  useView,
} from './view'
import { nowhereToWalk, walkOver, walkRound } from './walk'

export interface Command {
  readonly title: string
  readonly group: 'Drawing' | 'Selection' | 'Seeing' | 'Line up' | 'Checks' | 'Stages'
  /** As shown; "Ctrl" stands for the command key as well. */
  readonly keys: readonly string[]
  /** Not possible now: greyed in the menu. */
  readonly off?: () => boolean
  /** Works in every stage; otherwise in the drawing only. */
  readonly everywhere?: true
  readonly run: () => void
}

const nothing = () => useView.getState().parts.size + useView.getState().conductors.size === 0
/** What is selected, with both conductors of a line that stands for two; null: nothing. */
function chosen(): Selection | null {
  const { parts, conductors, view } = useView.getState()
  if (nothing()) return null
  const design = useOpen.getState().design
  const pair = design.conductors.filter(
    (c) =>
      conductors.has(c.id) ||
      (view === 'single-line' && c.returnOf !== null && conductors.has(c.returnOf)) ||
      (view === 'single-line' && [...conductors].some((id) => conductorById(design, id)?.returnOf === c.id)),
  )
  return { parts: [...parts], conductors: pair.map((c) => c.id) }
}
const noParts = () => useView.getState().parts.size === 0
const nothingToCopy = () => noParts() && useView.getState().texts.size === 0
const noZone = () => useView.getState().zone === null
const nothingToMove = () => nothingToCopy() && noZone()
const nothingToRemove = () => nothing() && nothingToMove()
const notOnePart = () => useView.getState().parts.size !== 1

const named = (did: string, none: string, f: () => string | null) => () => {
  const name = f()
  say(name === null ? none : `${did}: ${name}.`)
}

const lensCommand = (lens: Lens): Command => ({
  title: `Lens: ${LENSES[lens].title.toLowerCase()}`,
  group: 'Seeing',
  keys: [LENSES[lens].key],
  off: () => useView.getState().trying,
  run: () => turnLens(lens),
})

const define = <K extends string>(commands: Readonly<Record<K, Command>>) => commands

/** Every command, once: the keys, the menu and the shown list all read this. */
export const COMMANDS = define({
  place: {
    title: 'Place a part by name',
    group: 'Drawing',
    keys: ['P'],
    run: () => setOverlay({ is: 'place-by-name', at: usePointer.getState().at }),
  },
  join: {
    title: 'Join from the selected part',
    group: 'Drawing',
    keys: ['J'],
    off: notOnePart,
    run: () => {
      const [from] = useView.getState().parts
      if (from && !notOnePart()) setOverlay({ is: 'join', from })
      else say('Select one part first; then J joins from it.')
    },
  },
  undo: {
    title: 'Undo',
    group: 'Drawing',
    keys: ['Ctrl Z'],
    everywhere: true,
    run: named('Undone', 'Nothing is left to undo.', undo),
  },
  redo: {
    title: 'Redo',
    group: 'Drawing',
    keys: ['Ctrl Y', 'Ctrl Shift Z'],
    everywhere: true,
    run: named('Done again', 'Nothing that was undone is left to do again.', redo),
  },
  cut: { title: 'Cut', group: 'Selection', keys: ['Ctrl X'], off: nothingToCopy, run: cut },
  copy: { title: 'Copy', group: 'Selection', keys: ['Ctrl C'], off: nothingToCopy, run: copy },
  paste: { title: 'Paste', group: 'Selection', keys: ['Ctrl V'], run: pasteHere },
  duplicate: { title: 'Duplicate', group: 'Selection', keys: ['Ctrl D'], off: nothingToCopy, run: duplicate },
  remove: {
    title: 'Delete',
    group: 'Selection',
    keys: ['Delete', 'Backspace'],
    off: nothingToRemove,
    run: removeSelected,
  },
  all: {
    title: 'Select everything',
    group: 'Selection',
    keys: ['Ctrl A'],
    run: () => {
      const { parts, conductors, texts } = useOpen.getState().design
      select(
        parts.map((p) => p.id),
        conductors.map((c) => c.id),
        texts?.map((t) => t.id),
      )
    },
  },
  free: {
    title: 'Let it run freely',
    group: 'Selection',
    keys: ['L'],
    off: () => heldByHand().length === 0,
    run: runFreely,
  },
  none: { title: 'Select nothing', group: 'Selection', keys: ['Esc'], run: clearSelection },
  turn: {
    title: 'Turn by a quarter',
    group: 'Drawing',
    keys: ['T'],
    off: noParts,
    run: () => turnSelected(),
  },
  mirror: { title: 'Mirror', group: 'Drawing', keys: ['M'], off: noParts, run: () => mirrorSelected() },
  outline: {
    title: 'Outline the selected parts',
    group: 'Drawing',
    keys: ['O'],
    off: noParts,
    run: outlineSelected,
  },
  write: { title: 'Write on the sheet', group: 'Drawing', keys: ['W'], run: writeHere },
  wider: {
    title: 'Outline: wider',
    group: 'Drawing',
    keys: ['Ctrl →'],
    off: noZone,
    run: () => stretchZone(1, 0),
  },
  narrower: {
    title: 'Outline: narrower',
    group: 'Drawing',
    keys: ['Ctrl ←'],
    off: noZone,
    run: () => stretchZone(-1, 0),
  },
  taller: {
    title: 'Outline: taller',
    group: 'Drawing',
    keys: ['Ctrl ↓'],
    off: noZone,
    run: () => stretchZone(0, 1),
  },
  lower: {
    title: 'Outline: lower',
    group: 'Drawing',
    keys: ['Ctrl ↑'],
    off: noZone,
    run: () => stretchZone(0, -1),
  },
  arrange: {
    title: 'Arrange the whole drawing',
    group: 'Drawing',
    keys: ['A'],
    run: arrangeAll,
  },
  'walk-next': {
    title: 'Next conductor of the part',
    group: 'Selection',
    keys: ['C'],
    off: nowhereToWalk,
    run: () => walkRound(1),
  },
  'walk-before': {
    title: 'Conductor of the part before',
    group: 'Selection',
    keys: ['Shift C'],
    off: nowhereToWalk,
    run: () => walkRound(-1),
  },
  'walk-over': {
    title: 'Over the conductor to its far end',
    group: 'Selection',
    keys: ['G'],
    off: nowhereToWalk,
    run: walkOver,
  },
  'arrange-selected': {
    title: 'Arrange the selected parts',
    group: 'Drawing',
    keys: ['Shift A'],
    off: () => useView.getState().parts.size < 2,
    run: arrangeSelected,
  },
  'follow-single-line': {
    title: 'Place as in the single-line view',
    group: 'Drawing',
    keys: [],
    off: nothingToFollow,
    run: followSingleLine,
  },
  print: {
    title: 'Packs: preview and PDF',
    group: 'Stages',
    keys: ['Ctrl P'],
    everywhere: true,
    run: () => setStage('packs'),
  },
  save: {
    title: 'Save to a file',
    group: 'Drawing',
    keys: ['Ctrl S'],
    everywhere: true,
    run: () => void saveToDisk(),
  },
  size: {
    title: 'Size it',
    group: 'Checks',
    keys: ['S'],
    run: () => setOverlay({ is: 'size-it', selection: chosen() }),
  },
  left: { title: 'Nudge left', group: 'Drawing', keys: ['←'], off: nothingToMove, run: () => nudge(-1, 0) },
  right: { title: 'Nudge right', group: 'Drawing', keys: ['→'], off: nothingToMove, run: () => nudge(1, 0) },
  up: { title: 'Nudge up', group: 'Drawing', keys: ['↑'], off: nothingToMove, run: () => nudge(0, -1) },
  down: { title: 'Nudge down', group: 'Drawing', keys: ['↓'], off: nothingToMove, run: () => nudge(0, 1) },
  find: {
    title: 'Find a part or conductor',
    group: 'Seeing',
    keys: ['F', 'Ctrl F'],
    everywhere: true,
    run: () => setOverlay({ is: 'find' }),
  },
  whole: { title: 'Whole drawing', group: 'Seeing', keys: ['0'], run: lookAtAll },
  closer: {
    title: 'Look at the selection',
    group: 'Seeing',
    keys: ['.'],
    off: nothing,
    run: () => lookAt([...useView.getState().parts], [...useView.getState().conductors], true),
  },
  single: { title: 'Single-line view', group: 'Seeing', keys: ['1'], run: () => setView('single-line') },
  both: { title: 'Both poles', group: 'Seeing', keys: ['2'], run: () => setView('both-poles') },
  data: { title: 'Data links', group: 'Seeing', keys: ['3'], run: () => setView('data') },
  'lens-current': lensCommand('current'),
  'lens-protection': lensCommand('protection'),
  'lens-meter': lensCommand('meter'),
  'lens-drop': lensCommand('drop'),
  try: { title: 'Try it out, or back to the drawing', group: 'Seeing', keys: ['Y'], run: toggleTrying },
  keys: {
    title: 'Show the keys',
    group: 'Seeing',
    keys: ['?'],
    everywhere: true,
    run: () => setOverlay({ is: 'keys' }),
  },
  'stage-next': {
    title: 'Next stage of the job',
    group: 'Stages',
    keys: [']'],
    everywhere: true,
    run: () => stepStage(1),
  },
  'stage-before': {
    title: 'Stage before',
    group: 'Stages',
    keys: ['['],
    everywhere: true,
    run: () => stepStage(-1),
  },
  card: {
    title: 'Into the card',
    group: 'Seeing',
    keys: ['Enter'],
    run: () => document.querySelector<HTMLElement>('.card input, .card select')?.focus(),
  },
  next: { title: 'Next finding', group: 'Checks', keys: ['N'], run: () => stepFinding(1) },
  previous: { title: 'Previous finding', group: 'Checks', keys: ['Shift N'], run: () => stepFinding(-1) },
  'align-left': { title: 'Left edges', group: 'Line up', keys: [], run: () => lineUp('left') },
  'align-right': { title: 'Right edges', group: 'Line up', keys: [], run: () => lineUp('right') },
  'align-top': { title: 'Top edges', group: 'Line up', keys: [], run: () => lineUp('top') },
  'align-bottom': { title: 'Bottom edges', group: 'Line up', keys: [], run: () => lineUp('bottom') },
  'align-middle-x': { title: 'Middles upright', group: 'Line up', keys: [], run: () => lineUp('centre') },
  'align-middle-y': { title: 'Middles across', group: 'Line up', keys: [], run: () => lineUp('middle') },
  'spread-x': { title: 'Even gaps across', group: 'Line up', keys: [], run: () => spread('x') },
  'spread-y': { title: 'Even gaps upright', group: 'Line up', keys: [], run: () => spread('y') },
})

export type CommandKey = keyof typeof COMMANDS
