import { setStage, useView } from '../store/view'
import { STAGES } from './stages'

/** The stages of the job along the edge: from the drawing to what is handed over. */
export function Rail() {
  const stage = useView((s) => s.stage)
  return (
    <nav className="rail" aria-label="Stages of the job">
      {STAGES.map(({ key, title, about, icon: Icon }) => (
        <button
          key={key}
          type="button"
          aria-current={stage === key ? 'page' : undefined}
          title={about}
          onClick={() => setStage(key)}
        >
          <Icon size={20} aria-hidden />
          <span>{title}</span>
        </button>
      ))}
    </nav>
  )
}
