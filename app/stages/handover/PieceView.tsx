import { TriangleAlert } from 'lucide-react'
import type { Piece } from '../../../engine'
import { FindView } from './FindView'
import { PictureView } from './PictureView'

/** One piece of a chapter. */
export function PieceView({ piece }: { piece: Piece }) {
  switch (piece.is) {
    case 'text':
      return <p className={piece.strong ? 'strong' : undefined}>{piece.text}</p>
    case 'heading':
      return <h3>{piece.text}</h3>
    case 'list': {
      const items = piece.items.map((item) => <li key={item}>{item}</li>)
      return piece.numbered ? <ol>{items}</ol> : <ul>{items}</ul>
    }
    case 'rows':
      return (
        <dl className="rows">
          {piece.rows.map(({ label, value }) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      )
    case 'entry':
      return (
        <div className="entry">
          <h3 className="name">
            {piece.title} {piece.place !== '' && <span className="place">{piece.place}</span>}
          </h3>
          {piece.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      )
    case 'find':
      return <FindView find={piece} />
    case 'caution':
      return (
        <div className="caution">
          <TriangleAlert size={32} aria-hidden />
          <ul>
            {piece.items.map((item) => (
              <li key={item}>{item}</li>
            ))}
          </ul>
          <p className="strong">{piece.last}</p>
        </div>
      )
    case 'picture':
      return <PictureView picture={piece.picture} />
  }
}
