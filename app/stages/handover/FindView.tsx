import type { FuseLine, Piece } from '../../../engine'

/** A dead thing with its fuses: its own large, the others below in the order to look. */
export function FindView({ find }: { find: Extract<Piece, { readonly is: 'find' }> }) {
  const [own, ...others] = find.fuses
  return (
    <div className="entry find">
      <h3 className="name">
        {find.title} {find.place !== '' && <span className="place">{find.place}</span>}
      </h3>
      {find.first !== '' && <p>{find.first}</p>}
      {own && (
        <p className="fuse">
          {own.rating !== '' && <b className="badge">{own.rating}</b>}
          <span>
            <b>{own.text}</b>
            <br />
            {whereOf(own)}
          </span>
        </p>
      )}
      {others.length > 0 && (
        <div className="further">
          <span className="next">{find.next}</span>
          <ol>
            {others.map((fuse) => (
              <li key={`${fuse.rating} ${fuse.text} ${fuse.remark}`}>
                <b>{fuse.rating}</b>{' '}
                <span>{[fuse.text, whereOf(fuse)].filter((s) => s !== '').join(' · ')}</span>
              </li>
            ))}
          </ol>
        </div>
      )}
      {find.note !== '' && <p className="note">{find.note}</p>}
    </div>
  )
}

const whereOf = ({ colour, place, remark }: FuseLine): string =>
  [colour, place, remark].filter((s) => s !== '').join(' · ')
