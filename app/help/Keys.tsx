import { Footprints } from 'lucide-react'
import { COMMANDS, type Command } from '../store/commands'
import { About } from './About'
import { goTo } from './round/round'
import { Sheet } from './Sheet'

const BY_HAND: readonly (readonly [string, string])[] = [
  ['Drag a part from the shelf', 'places it where you let go'],
  ['Let a fuse or a switch go on a conductor', 'fits it in; both pieces then ask for their length'],
  ['Drag from terminal to terminal', 'joins them; a feed brings its return'],
  ['Tap a terminal, then another', 'joins them as well'],
  ['Drag over empty paper', 'selects what it touches'],
  ['Shift + click', 'adds to the selection or takes away'],
  ['Drag an outline by its line or name', 'moves it with its parts; by its corners, resizes it'],
  ['Double click on a text', 'writes in it; Ctrl + Enter or a click beside it ends'],
  ['Space + drag', 'moves the sheet'],
  ['Wheel or two fingers', 'moves the sheet; with Ctrl, zooms'],
  ['Drop a file on the page', 'opens it as a new design'],
]

/** Everything that has a key, and what the hand does. */
export function Keys({ onClose }: { onClose: () => void }) {
  const keyed = Object.values<Command>(COMMANDS).filter((c) => c.keys.length > 0)
  const groups = [...new Set(keyed.map((c) => c.group))]
  return (
    <Sheet title="Keys and hands" onClose={onClose}>
      <div className="buttons">
        <button
          type="button"
          className="plain"
          onClick={() => {
            onClose()
            goTo(0)
          }}
        >
          <Footprints size={16} aria-hidden /> Show me round
        </button>
      </div>
      <div className="keys">
        {groups.map((group) => (
          <section key={group}>
            <h3>{group}</h3>
            <dl>
              {keyed
                .filter((c) => c.group === group)
                .map((c) => (
                  <div key={c.title}>
                    <dt>
                      {c.keys.map((k) => (
                        <kbd key={k}>{k}</kbd>
                      ))}
                    </dt>
                    <dd>{c.title}</dd>
                  </div>
                ))}
            </dl>
          </section>
        ))}
        <section>
          <h3>By hand</h3>
          <dl className="hands">
            {BY_HAND.map(([what, does]) => (
              <div key={what}>
                <dt>{what}</dt>
                <dd>{does}</dd>
              </div>
            ))}
          </dl>
        </section>
      </div>
      <About />
    </Sheet>
  )
}
