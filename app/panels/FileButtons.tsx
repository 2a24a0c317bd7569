import { FileDown, FolderOpen, LayoutGrid, Printer } from 'lucide-react'
import { openFromDisk, saveToDisk } from '../files/session'
import { refuse } from '../store/say'
import { setOverlay, setStage } from '../store/view'

const trying = (act: () => Promise<unknown>) => () =>
  void act().catch((e: unknown) => refuse(e instanceof Error ? e.message : String(e)))

/** Designs of this browser, real files, and paper. */
export function FileButtons() {
  return (
    <fieldset aria-label="Files" className="cell">
      <button
        type="button"
        aria-label="Designs"
        onClick={() => setOverlay({ is: 'designs' })}
        title="Designs kept in this browser, demos"
      >
        <LayoutGrid size={16} aria-hidden /> <span className="name">Designs</span>
      </button>
      <button
        type="button"
        className="icon"
        aria-label="Open a file"
        title="Open a file"
        onClick={trying(openFromDisk)}
      >
        <FolderOpen size={18} aria-hidden />
      </button>
      <button
        type="button"
        className="icon"
        aria-label="Save to a file"
        title="Save to a file"
        onClick={trying(saveToDisk)}
      >
        <FileDown size={18} aria-hidden />
      </button>
      <button
        type="button"
        className="icon"
        aria-label="Packs on paper"
        title="Packs on paper: preview and PDF"
        onClick={() => setStage('packs')}
      >
        <Printer size={18} aria-hidden />
      </button>
    </fieldset>
  )
}
