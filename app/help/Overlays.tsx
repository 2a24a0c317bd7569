import { setOverlay, useView } from '../store/view'
import { Cautions } from './Cautions'
import { Designs } from './Designs'
import { Earlier } from './Earlier'
import { Find } from './Find'
import { JoinByName } from './JoinByName'
import { Keys } from './Keys'
import { PlaceByName } from './PlaceByName'
import { Problems } from './Problems'
import { Reconnect } from './Reconnect'
import { SizeIt } from './SizeIt'

/** Whatever lies over the drawing at the moment. */
export function Overlays() {
  const overlay = useView((s) => s.overlay)
  const close = () => setOverlay(null)
  switch (overlay?.is) {
    case 'place-by-name':
      return <PlaceByName at={overlay.at} onClose={close} />
    case 'find':
      return <Find onClose={close} />
    case 'join':
      return <JoinByName from={overlay.from} onClose={close} />
    case 'designs':
      return <Designs onClose={close} />
    case 'keys':
      return <Keys onClose={close} />
    case 'cautions':
      return <Cautions onClose={close} />
    case 'size-it':
      return <SizeIt selection={overlay.selection} onClose={close} />
    case 'earlier':
      return <Earlier onClose={close} />
    case 'reconnect':
      return <Reconnect conductor={overlay.conductor} end={overlay.end} onClose={close} />
    case 'problems':
      return <Problems overlay={overlay} onClose={close} />
    default:
      return null
  }
}
