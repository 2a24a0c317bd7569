import { memo, useEffect, useRef } from 'react'
import { typeSize } from '../../engine'
import { textById, writeDown } from '../store/onsheet'
import { setPen, useView } from '../store/view'
import { useLettering } from './lettering'
import { PX } from './scale'

/** Least size of type, CSS px on the page, to write in. */
const LEAST_PX = 14

/** Writing in place: Ctrl + Enter or leaving it stores the text. Escape keeps a new text too, and an old one as it was. */
export const Pen = memo(function Pen() {
  const pen = useView((s) => s.pen)
  return pen && <Field key={pen.id ?? 'new'} id={pen.id} x={pen.at[0]} y={pen.at[1]} />
})

function Field({ id, x, y }: { id: string | null; x: number; y: number }) {
  const field = useRef<HTMLTextAreaElement>(null)
  const dropped = useRef(false)
  const zoom = useLettering()
  const size = Math.max(typeSize(2.5) * PX, LEAST_PX / zoom)
  const before = id === null ? '' : (textById(id)?.text ?? '')
  useEffect(() => field.current?.focus(), [])
  return (
    <textarea
      ref={field}
      className="pen nopan nodrag nowheel"
      aria-label="Text on the sheet"
      placeholder="Text"
      defaultValue={before}
      rows={Math.max(2, before.split('\n').length + 1)}
      maxLength={2000}
      style={{ left: x * PX, top: y * PX, fontSize: size, width: size * 16 }}
      onPointerDown={(e) => e.stopPropagation()}
      onBlur={(e) => !dropped.current && writeDown(e.currentTarget.value)}
      onKeyDown={(e) => {
        e.stopPropagation()
        if (e.key === 'Escape' && id !== null) {
          dropped.current = true
          setPen(null)
        } else if (e.key === 'Escape' || (e.key === 'Enter' && (e.ctrlKey || e.metaKey)))
          e.currentTarget.blur()
      }}
    />
  )
}
