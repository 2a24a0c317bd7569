import type { Cover } from '../../../engine'

/** The front: whose system it is, and where to look first. */
export function CoverView({ cover, onGo }: { cover: Cover; onGo: (chapter: number) => void }) {
  return (
    <header className="front">
      <p className="kind">{cover.title}</p>
      <h1>{cover.name}</h1>
      <p>{cover.system}</p>
      <dl>
        {cover.rows.map(({ label, value }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <nav aria-label={cover.find.title}>
        <h2>{cover.find.title}</h2>
        <ol>
          {cover.find.rows.map(({ chapter, question }) => (
            <li key={chapter}>
              <button type="button" onClick={() => onGo(chapter)}>
                <span className="number">{chapter}</span>
                {question}
              </button>
            </li>
          ))}
        </ol>
      </nav>
    </header>
  )
}
