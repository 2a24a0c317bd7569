import { Keyboard, Moon, PanelLeftOpen, Redo2, Ruler, Search, Sun, Undo2 } from 'lucide-react'
import type { SceneView } from '../../engine'
import { LensSwitch } from '../lenses/LensSwitch'
import { COMMANDS } from '../store/commands'
import { nextRedo, nextUndo, useOpen } from '../store/open'
import { setOverlay, setView, toggleShelf, useView } from '../store/view'
import { toggleTheme, useTheme } from '../theme/theme'
import { TrySwitch } from '../tryit/TrySwitch'
import { FileButtons } from './FileButtons'
import { StandingBadge } from './StandingBadge'

const VIEWS: readonly (readonly [SceneView, string])[] = [
  ['single-line', 'Single-line'],
  ['both-poles', 'Both poles'],
  ['data', 'Data links'],
]

/** The strip along the top, ruled like a title block: whose drawing it is, what can be done with it, how it is seen. */
export function TopStrip() {
  const { name, vehicle } = useOpen((s) => s.design.settings)
  const undone = useOpen(nextUndo)
  const redone = useOpen(nextRedo)
  const drawing = useView((s) => s.stage === 'drawing')
  const shelf = useView((s) => s.shelf)
  const dark = useTheme((s) => s.theme === 'dark')
  return (
    <header className="top">
      <div className="title">
        <span className="mark">
          <svg viewBox="0 0 16 16" width="20" height="20" aria-hidden>
            <path d="M1 4H15M1 8H9V12H15" />
          </svg>
        </span>
        <h1>
          {name || 'Untitled design'}
          <span className="unseen"> — Loomwright</span>
        </h1>
        <span className="sub">{vehicle}</span>
        <StandingBadge />
      </div>
      {drawing && !shelf && (
        <button type="button" className="icon" aria-label="Show the shelf" onClick={toggleShelf}>
          <PanelLeftOpen size={18} aria-hidden />
        </button>
      )}
      <FileButtons />
      <fieldset aria-label="History" className="cell">
        <button
          type="button"
          className="icon"
          disabled={undone === null}
          aria-label={undone === null ? 'Nothing to undo' : `Undo: ${undone}`}
          title={undone === null ? 'Nothing to undo' : `Undo: ${undone}`}
          onClick={() => COMMANDS.undo.run()}
        >
          <Undo2 size={18} aria-hidden />
        </button>
        <button
          type="button"
          className="icon"
          disabled={redone === null}
          aria-label={redone === null ? 'Nothing to redo' : `Redo: ${redone}`}
          title={redone === null ? 'Nothing to redo' : `Redo: ${redone}`}
          onClick={() => COMMANDS.redo.run()}
        >
          <Redo2 size={18} aria-hidden />
        </button>
      </fieldset>
      {drawing && <WaysOfSeeing />}
      <span className="grow" />
      <div className="cell">
        <button
          type="button"
          className="icon"
          aria-label="Find"
          title="Find (F)"
          onClick={() => setOverlay({ is: 'find' })}
        >
          <Search size={18} aria-hidden />
        </button>
        <button
          type="button"
          className="icon"
          aria-label="Keys"
          title="Keys (?)"
          onClick={() => setOverlay({ is: 'keys' })}
        >
          <Keyboard size={18} aria-hidden />
        </button>
        <button
          type="button"
          className="icon"
          aria-label={dark ? 'Light paper' : 'Dark paper'}
          onClick={toggleTheme}
        >
          {dark ? <Sun size={18} aria-hidden /> : <Moon size={18} aria-hidden />}
        </button>
      </div>
    </header>
  )
}

/** What only the drawing has: its views, lenses, trying out, sizing. */
function WaysOfSeeing() {
  const view = useView((s) => s.view)
  return (
    <>
      <div role="radiogroup" aria-label="View" className="cell views">
        {VIEWS.map(([key, text], i) => (
          // biome-ignore lint/a11y/useSemanticElements: a row of buttons, one of them on
          <button
            key={key}
            type="button"
            role="radio"
            aria-checked={view === key}
            title={`${text} (${i + 1})`}
            onClick={() => setView(key)}
          >
            {text}
          </button>
        ))}
      </div>
      <LensSwitch />
      <TrySwitch />
      <div className="cell">
        <button
          type="button"
          aria-label="Size it"
          title="Sizes and ratings by the rule set (S)"
          onClick={() => COMMANDS.size.run()}
        >
          <Ruler size={16} aria-hidden /> <span className="word">Size it</span>
        </button>
      </div>
    </>
  )
}
