import type { HandoverFacts } from '../../../calc/handover/facts'
import type { PictureGroup } from '../../../calc/handover/picture'
import type { Store } from '../../../calc/handover/stores'
import type { PictureBand, Piece } from '../book'
import type { Say } from '../say'

/** The system in plain blocks. */
export function picturePieces({ picture }: HandoverFacts, say: Say): Piece[] {
  const { w, part } = say
  const place = (p: { readonly location: string }): string => p.location.trim()
  const charging = picture.charging.map(({ part: p, from }) =>
    from
      ? { title: part(from), place: place(from), lines: [w.picture.through(part(p))] }
      : { title: part(p), place: place(p), lines: [] },
  )
  const stores = picture.stores.map((s) => ({
    title: part(s.part),
    place: place(s.part),
    lines: storeLines(s, say),
  }))
  return [
    { is: 'text', text: w.chapters.picture.lead },
    {
      is: 'picture',
      picture: {
        charging: { title: w.picture.charging, blocks: charging },
        stores: { title: w.picture.stores, blocks: stores },
        divided: { title: w.picture.divided, blocks: picture.groups.map((g) => groupBlock(g, say)) },
        note: w.picture.stands,
      },
    },
  ]
}

function storeLines({ capacityAh, volts, chemistry }: Store, { w, figure }: Say): string[] {
  const size = [volts === null ? '' : figure(volts, 'V'), capacityAh === null ? '' : figure(capacityAh, 'Ah')]
  return [size.filter((s) => s !== '').join(', '), chemistry === null ? '' : w.chemistries[chemistry]].filter(
    (line) => line !== '',
  )
}

function groupBlock({ block, behind, things }: PictureGroup, say: Say): PictureBand['blocks'][number] {
  const { w, part, short, figure } = say
  const fuse =
    behind && behind.ratingA !== null
      ? [w.picture.behind(`${part(behind.part)}, ${figure(behind.ratingA, 'A')}`)]
      : []
  return {
    title: block ? part(block) : w.picture.ownFuse,
    place: block ? block.location.trim() : '',
    lines: [...fuse, say.list(things.map((t) => short(t.part)))],
  }
}
