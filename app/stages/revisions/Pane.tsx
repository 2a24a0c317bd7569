import { type KeyboardEvent, type PointerEvent, useEffect, useMemo, useRef } from 'react'
import { type Scene, sceneMarks } from '../../../engine'
import { Marks } from '../../symbols/Marks'
import { SignLayer } from './SignLayer'
import type { Sign } from './signs'
import { type Frame, middleOf, shifted, zoomed } from './window'

interface Props {
  readonly title: string
  readonly scene: Scene
  /** Drawn as a ghost behind: what is not there any more. */
  readonly gone?: { readonly scene: Scene; readonly ids: ReadonlySet<string> }
  readonly signs: readonly Sign[]
  readonly picked: string | null
  readonly frame: Frame
  readonly onFrame: (change: (frame: Frame) => Frame) => void
  readonly onPick: (row: string) => void
}

const STEP = 0.8
/** So many mm across, marks are as large as drawn. */
const NEAR = 260

/** A drawing that is only looked at. Several with the same frame are panned and zoomed in step. */
export function Pane({ title, scene, gone, signs, picked, frame, onFrame, onPick }: Props) {
  const svg = useRef<SVGSVGElement>(null)
  const fingers = useRef(new Map<number, readonly [number, number]>())
  const marks = useMemo(() => sceneMarks(scene), [scene])
  const ghost = useMemo(() => (gone ? sceneMarks(gone.scene, (id) => gone.ids.has(id)) : []), [gone])

  useEffect(() => {
    const at = svg.current
    if (!at) return
    const wheel = (e: WheelEvent) => {
      e.preventDefault()
      const point = placeOf(at, e.clientX, e.clientY)
      onFrame((f) => zoomed(f, e.deltaY > 0 ? 1 / STEP : STEP, point))
    }
    at.addEventListener('wheel', wheel, { passive: false })
    return () => at.removeEventListener('wheel', wheel)
  }, [onFrame])

  const move = (e: PointerEvent<SVGSVGElement>) => {
    const held = fingers.current
    const before = held.get(e.pointerId)
    const at = svg.current
    if (!before || !at) return
    const now = [e.clientX, e.clientY] as const
    const others = [...held].filter(([id]) => id !== e.pointerId).map(([, p]) => p)
    held.set(e.pointerId, now)
    const mm = 1 / (at.getScreenCTM()?.a ?? 1)
    if (others.length === 0)
      return onFrame((f) => shifted(f, (before[0] - now[0]) * mm, (before[1] - now[1]) * mm))
    const [[ox, oy]] = others as [readonly [number, number]]
    const was = Math.hypot(before[0] - ox, before[1] - oy)
    const is = Math.max(1, Math.hypot(now[0] - ox, now[1] - oy))
    const between = placeOf(at, (now[0] + ox) / 2, (now[1] + oy) / 2)
    onFrame((f) => zoomed(f, was / is, between))
  }
  const release = (e: PointerEvent) => fingers.current.delete(e.pointerId)
  const keys = (e: KeyboardEvent) => {
    const change = KEYS[e.key]
    if (!change) return
    e.preventDefault()
    onFrame(change)
  }
  return (
    <figure className="pane">
      <figcaption>{title}</figcaption>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: the drawing is panned and zoomed by keys */}
      <svg
        ref={svg}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the drawing is panned and zoomed by keys
        tabIndex={0}
        role="img"
        aria-label={`${title}. Arrow keys move the drawing, plus and minus zoom it.`}
        viewBox={`${frame.x} ${frame.y} ${frame.w} ${frame.h}`}
        onPointerDown={(e) => {
          fingers.current.set(e.pointerId, [e.clientX, e.clientY])
        }}
        onPointerMove={move}
        onPointerUp={release}
        onPointerCancel={release}
        onPointerLeave={release}
        onKeyDown={keys}
      >
        <g className="gone">
          <Marks marks={ghost} />
        </g>
        <Marks marks={marks} />
        <SignLayer signs={signs} picked={picked} scale={Math.max(1, frame.w / NEAR)} onPick={onPick} />
      </svg>
    </figure>
  )
}

const PART = 0.1
const KEYS: Readonly<Record<string, (f: Frame) => Frame>> = {
  ArrowLeft: (f) => shifted(f, -f.w * PART, 0),
  ArrowRight: (f) => shifted(f, f.w * PART, 0),
  ArrowUp: (f) => shifted(f, 0, -f.h * PART),
  ArrowDown: (f) => shifted(f, 0, f.h * PART),
  '+': (f) => zoomed(f, STEP, middleOf(f)),
  '-': (f) => zoomed(f, 1 / STEP, middleOf(f)),
}

function placeOf(svg: SVGSVGElement, x: number, y: number): readonly [number, number] {
  const m = svg.getScreenCTM()
  return m ? [(x - m.e) / m.a, (y - m.f) / m.d] : [0, 0]
}
