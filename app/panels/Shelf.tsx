import { PanelLeftClose, Plus } from 'lucide-react'
import { KINDS, SHELF_GROUPS, type ShelfGroup } from '../../engine'
import { useOpen } from '../store/open'
import { setOverlay, toggleShelf } from '../store/view'
import { ShelfItem } from './ShelfItem'

const GROUPS = (Object.keys(SHELF_GROUPS) as ShelfGroup[])
  .map((group) => ({ group, kinds: KINDS.filter((k) => k.group === group) }))
  .filter(({ kinds }) => kinds.length > 0)

/** All part kinds, to be dragged onto the sheet; a click or Enter puts one on the next free place. */
export function Shelf() {
  const writing = useOpen((s) => s.hold === 'writing')
  return (
    <nav className="shelf" aria-label="Shelf of parts">
      <header>
        <button
          type="button"
          className="plain wide"
          disabled={!writing}
          onClick={() => setOverlay({ is: 'place-by-name', at: null })}
        >
          <Plus size={16} aria-hidden /> Place by name <kbd>P</kbd>
        </button>
        <button type="button" className="icon" aria-label="Fold the shelf away" onClick={toggleShelf}>
          <PanelLeftClose size={16} aria-hidden />
        </button>
      </header>
      <div className="groups">
        {GROUPS.map(({ group, kinds }) => (
          <details key={group} open>
            <summary>{SHELF_GROUPS[group]}</summary>
            <ul>
              {kinds.map((kind) => (
                <li key={kind.key}>
                  <ShelfItem kind={kind} disabled={!writing} />
                </li>
              ))}
            </ul>
          </details>
        ))}
      </div>
    </nav>
  )
}
