import { memo } from 'react'
import { type SheetText, sceneText, textsIn } from '../../engine'
import { setGhosts } from '../store/hand'
import { moveTexts } from '../store/onsheet'
import { doEdit, useOpen } from '../store/open'
import { select, setPen, toggleText, useView } from '../store/view'
import { Marks } from '../symbols/Marks'
import { hold } from './holding'

/** Texts of the view. */
export const SheetTexts = memo(function SheetTexts() {
  const texts = useOpen((s) => s.design.texts)
  const view = useView((s) => s.view)
  return texts && textsIn({ texts }, view).map((text) => <Text key={text.id} text={text} />)
})

const Text = memo(function Text({ text }: { text: SheetText }) {
  const selected = useView((s) => s.texts.has(text.id))
  const written = useView((s) => s.pen?.id === text.id)
  if (written) return null
  const { id } = text
  const { x, y, w, h, marks } = sceneText(text)
  const held = () => {
    const { texts } = useView.getState()
    const all = useOpen.getState().design.texts ?? []
    return texts.has(id) ? all.filter((t) => texts.has(t.id)) : [text]
  }
  const write = () => !useView.getState().trying && setPen({ id, at: [x, y] })
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: by keyboard, the card of the design reaches every text
    <g
      className={`words${selected ? ' selected' : ''}`}
      data-text={id}
      onPointerDown={(e) =>
        hold(e, {
          move: ([dx, dy]) =>
            setGhosts(
              held().map((t) => {
                const box = sceneText(t)
                return { x: box.x + dx, y: box.y + dy, w: box.w, h: box.h }
              }),
            ),
          drop: ([dx, dy]) => {
            const ids = held().map((t) => t.id)
            doEdit('Move text', { do: 'all', edits: moveTexts(ids, dx, dy) })
          },
          end: () => setGhosts([]),
        })
      }
      onClick={(e) => {
        e.stopPropagation()
        if (useView.getState().trying) return
        if (e.shiftKey) toggleText(id)
        else select([], [], [id])
      }}
      onContextMenu={() => !selected && !useView.getState().trying && select([], [], [id])}
      onDoubleClick={write}
    >
      <rect className="catch nopan" x={x - 1} y={y - 0.5} width={w + 2} height={h + 1} rx={0.6} />
      <g transform={`translate(${x} ${y})`}>
        <Marks marks={marks} />
      </g>
    </g>
  )
})
