import { FilePlus, FolderOpen, History, Trash2 } from 'lucide-react'
import { useEffect, useState } from 'react'
import type { KeptRow } from '../files/database'
import { type Demo, listDemos } from '../files/demos'
import { discard, listKept } from '../files/kept'
import { openBlank, openDemo, openFromDisk, openKept } from '../files/session'
import { useOpen } from '../store/open'
import { setOverlay } from '../store/view'
import { DesignTile } from './DesignTile'
import { Sheet } from './Sheet'

/** Every design kept in this browser, and the ways to begin another. */
export function Designs({ onClose }: { onClose: () => void }) {
  const [kept, setKept] = useState<readonly KeptRow[]>([])
  const [demos, setDemos] = useState<readonly Demo[]>([])
  const here = useOpen((s) => s.design.id)
  useEffect(() => {
    void listKept().then(setKept)
    void listDemos().then(setDemos)
  }, [])
  const then = (act: () => Promise<unknown>) => () => {
    onClose()
    void act()
  }
  return (
    <Sheet
      title="Designs"
      about="Kept in this browser only. Save a file to keep one elsewhere."
      onClose={onClose}
    >
      <div className="buttons">
        <button type="button" className="main" onClick={then(openBlank)}>
          <FilePlus size={16} aria-hidden /> Empty sheet
        </button>
        <button type="button" className="plain" onClick={then(openFromDisk)}>
          <FolderOpen size={16} aria-hidden /> Open a file…
        </button>
        <button type="button" className="plain" onClick={() => setOverlay({ is: 'earlier' })}>
          <History size={16} aria-hidden /> Earlier states of this design…
        </button>
      </div>
      <h3>Kept here</h3>
      {kept.length === 0 && <p className="quiet">Nothing yet. Every edit is kept as soon as it is made.</p>}
      <div className="designs">
        {kept.map((row) => (
          <article key={row.id} className={row.id === here ? 'here' : ''}>
            <DesignTile row={row} onOpen={then(() => openKept(row.id))} />
            {row.id !== here && (
              <DiscardButton
                name={row.name}
                onDiscard={() => {
                  void discard(row.id).then(listKept).then(setKept)
                }}
              />
            )}
          </article>
        ))}
      </div>
      {demos.length > 0 && <h3>Begin from a demo</h3>}
      <div className="demos">
        {demos.map((demo) => (
          <button key={demo.file} type="button" className="plain" onClick={then(() => openDemo(demo))}>
            <b>{demo.title}</b>
            <small>{demo.about}</small>
          </button>
        ))}
      </div>
    </Sheet>
  )
}

/** Asks once more before it throws a design away: there is no way back. */
function DiscardButton({ name, onDiscard }: { name: string; onDiscard: () => void }) {
  const [sure, setSure] = useState(false)
  const what = name || 'Untitled design'
  if (sure)
    return (
      <button type="button" className="plain discard" onClick={onDiscard} onBlur={() => setSure(false)}>
        Throw away for good
      </button>
    )
  return (
    <button
      type="button"
      className="icon discard"
      aria-label={`Throw away ${what}`}
      onClick={() => setSure(true)}
    >
      <Trash2 size={16} aria-hidden />
    </button>
  )
}
