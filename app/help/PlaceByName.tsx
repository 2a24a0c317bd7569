import { KINDS, kindOf, SHELF_GROUPS, type XY } from '../../engine'
import { focusName } from '../store/focusname'
import { matching } from '../store/matching'
import { placePart } from '../store/place'
import { KindPicture } from '../symbols/KindPicture'
import { PickList } from './PickList'
import { Sheet } from './Sheet'

/** Type a kind, press Enter: it stands at the pointer or on the next free place, and its name is asked for. */
export function PlaceByName({ at, onClose }: { at: XY | null; onClose: () => void }) {
  const pick = (key: string) => {
    const kind = kindOf(key)
    onClose()
    if (kind && placePart(kind, { near: at })) focusName()
  }
  return (
    <Sheet title="Place a part" narrow onClose={onClose}>
      <PickList
        label="Kind of part"
        placeholder="Type a name: fridge, fuse, relay…"
        none="Nothing on the shelf is called that."
        choices={(typed) =>
          matching(typed, KINDS, (k) => [k.title, ...k.words, SHELF_GROUPS[k.group]].join(' · ')).map(
            (k) => ({
              key: k.key,
              left: k.letter,
              picture: <KindPicture kind={k} />,
              text: k.title,
              right: SHELF_GROUPS[k.group],
            }),
          )
        }
        onPick={pick}
      />
    </Sheet>
  )
}
