import { ArrowDown } from 'lucide-react'
import { Fragment } from 'react'
import type { PictureWords } from '../../../engine'

/** The system in three bands of blocks, power flowing down. */
export function PictureView({ picture }: { picture: PictureWords }) {
  const bands = [picture.charging, picture.stores, picture.divided].filter((b) => b.blocks.length > 0)
  return (
    <figure className="bands">
      {bands.map((band, i) => (
        <Fragment key={band.title}>
          {i > 0 && <ArrowDown className="flow" size={28} aria-hidden />}
          <div className="band">
            <h3 className="name">{band.title}</h3>
            <ul>
              {band.blocks.map(({ title, place, lines }) => (
                <li key={`${title} ${place}`}>
                  <b>{title}</b> {place !== '' && <span className="place">{place}</span>}
                  {lines.map((line) => (
                    <p key={line}>{line}</p>
                  ))}
                </li>
              ))}
            </ul>
          </div>
        </Fragment>
      ))}
      <figcaption>{picture.note}</figcaption>
    </figure>
  )
}
