import { setStage } from '../../store/view'

/** A drawing without parts has nothing to measure. */
export function NothingYet() {
  return (
    <main className="page waiting">
      <h2>Nothing to commission yet</h2>
      <p>The drawing is empty. Draw the system first; its tests then stand here, step by step.</p>
      <button type="button" className="main" onClick={() => setStage('drawing')}>
        To the drawing
      </button>
    </main>
  )
}
