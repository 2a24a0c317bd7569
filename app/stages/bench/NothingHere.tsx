import { setStage } from '../../store/view'

/** A drawing without conductors has nothing to build. */
export function NothingHere() {
  return (
    <section className="bench-none">
      <h2>Nothing to build yet</h2>
      <p>The drawing has no conductors. Draw them first; they then stand here in building order.</p>
      <button type="button" className="main" onClick={() => setStage('drawing')}>
        To the drawing
      </button>
    </section>
  )
}
