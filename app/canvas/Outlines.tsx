import { memo } from 'react'
import { outlineMarks, type SceneOutline } from '../../engine'
import { carry, putDown, setGhosts } from '../store/hand'
import { useLatest } from '../store/latest'
import { moveZone, resizeZone, zoneById } from '../store/onsheet'
import { useOpen } from '../store/open'
import { type Box, selectZone, useView } from '../store/view'
import { Marks } from '../symbols/Marks'
import { hold } from './holding'
import { useLettering } from './lettering'
import { nameAt } from './outlinename'

/** Outlines behind the parts: zones can be taken hold of, the one round mains comes of itself. */
export const Outlines = memo(function Outlines() {
  const outlines = useLatest((s) => s.scene?.outlines)
  return outlines?.map((outline, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: outlines are replaced whole with each layout
    <Outline key={i} outline={outline} />
  ))
})

function Outline({ outline }: { outline: SceneOutline }) {
  const { zone: id, x, y, w, h } = outline
  const zone = useOpen((s) => s.design.zones?.find((z) => z.id === id))
  const selected = useView((s) => s.zone !== null && s.zone === id)
  const zoom = useLettering()
  const name = nameAt(outline, zone?.name ?? null, zoom)
  if (id !== null && !zone) return null
  const marks = (
    <>
      <Marks marks={[outlineMarks(outline)]} />
      <g transform={`translate(${name.x} ${name.y})`}>
        <Marks marks={name.marks} />
      </g>
    </>
  )
  if (!zone) return <g className="outline">{marks}</g>
  const take = {
    onPointerDown: (e: React.PointerEvent<SVGElement>) =>
      hold(e, {
        move: ([dx, dy]) => {
          setGhosts([{ x: x + dx, y: y + dy, w, h }])
          carry(zone.parts, [dx, dy])
        },
        drop: ([dx, dy]) => moveZone(zone, dx, dy),
        end: () => {
          setGhosts([])
          putDown()
        },
      }),
    onClick: (e: React.MouseEvent) => {
      e.stopPropagation()
      if (!useView.getState().trying) selectZone(zone.id)
    },
    onContextMenu: () => !useView.getState().trying && selectZone(zone.id),
    onDoubleClick: () => document.querySelector<HTMLInputElement>('#zone-name')?.select(),
  }
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: by keyboard, the card of the design reaches every outline
    <g className={`outline zone${selected ? ' selected' : ''}`} data-zone={zone.name} {...take}>
      {selected && <rect className="halo" x={x} y={y} width={w} height={h} />}
      {marks}
      <rect className="catch nopan" x={x} y={y} width={w} height={h} />
      <rect className="catch name nopan" x={name.x} y={name.y} width={name.w} height={name.h} />
      {selected && standsAs(outline, zone) && <Corners box={zone} id={zone.id} />}
    </g>
  )
}

/** Is it drawn as it was put, and not in pieces or still under way? */
const standsAs = (o: Box, zone: Box): boolean =>
  o.x === zone.x - 1.25 && o.y === zone.y - 1.25 && o.w === zone.w + 2.5 && o.h === zone.h + 2.5

const CORNERS = [
  [0, 0],
  [1, 0],
  [0, 1],
  [1, 1],
] as const

/** What the hand takes hold of to resize. */
function Corners({ box, id }: { box: Box; id: string }) {
  return CORNERS.map(([right, down]) => {
    const [cx, cy] = [box.x - 1.25 + right * (box.w + 2.5), box.y - 1.25 + down * (box.h + 2.5)]
    const moved = ([dx, dy]: readonly [number, number]): Box => ({
      x: right ? box.x : Math.min(box.x + dx, box.x + box.w - 2.5),
      y: down ? box.y : Math.min(box.y + dy, box.y + box.h - 2.5),
      w: Math.max(2.5, box.w + (right ? dx : -dx)),
      h: Math.max(2.5, box.h + (down ? dy : -dy)),
    })
    return (
      // biome-ignore lint/a11y/noStaticElementInteractions: by keyboard, Ctrl with the arrows resizes
      <g
        key={`${right}${down}`}
        className={`corner nopan ${right === down ? 'falling' : 'rising'}`}
        onPointerDown={(e) =>
          hold(e, {
            move: (by) => setGhosts([moved(by)]),
            drop: (by) => {
              const zone = zoneById(id)
              const { x, y, w, h } = moved(by)
              if (zone) resizeZone(zone, x, y, w, h)
            },
            end: () => setGhosts([]),
          })
        }
      >
        <circle className="reach" cx={cx} cy={cy} r={4} />
        <rect x={cx - 1} y={cy - 1} width={2} height={2} />
      </g>
    )
  })
}
