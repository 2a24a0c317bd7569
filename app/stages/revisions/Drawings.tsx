import { Maximize2, ZoomIn, ZoomOut } from 'lucide-react'
import { useCallback, useEffect, useMemo, useState } from 'react'
import type { ChangeRow } from '../../../engine'
import type { Compared } from '../../worker/compare.worker'
import { pickRow } from './looking'
import { Pane } from './Pane'
import { cornersOf, signOf, signsOn } from './signs'
import { useStacked } from './stacked'
import { around, type Frame, frameOf, zoomed } from './window'

interface Props {
  readonly compared: Compared
  readonly titles: { readonly before: string; readonly after: string }
  readonly row: ChangeRow | null
  /** One drawing with everything marked, both beside one another, or one without marks. */
  readonly shown: 'marked' | 'beside' | 'alone'
}

/** Free strip round what is brought into sight, mm. */
const AROUND = 25

/** Drawings of two states, panned and zoomed in step. */
export function Drawings({ compared, titles, row, shown }: Props) {
  const { before, after, rows } = compared
  const whole = useMemo(() => frameOf([before, after]), [before, after])
  const [frame, setFrame] = useState(whole)
  useEffect(() => setFrame(whole), [whole])
  useEffect(() => {
    if (!row) return
    const corners = [before, after].flatMap((scene) => cornersOf(signOf(scene, row)))
    if (corners.length > 0) setFrame(around(corners, AROUND))
  }, [row, before, after])
  const change = useCallback((by: (f: Frame) => Frame) => setFrame(by), [])

  const removed = useMemo(() => rows.filter((r) => r.what === 'removed' && r.group !== 'findings'), [rows])
  const gone = useMemo(
    () => ({
      scene: before,
      ids: new Set(
        removed.flatMap((r) => [...(r.group === 'sheet' ? [] : r.parts), ...r.conductors, ...r.onSheet]),
      ),
    }),
    [before, removed],
  )
  const signs = useMemo(() => {
    const added = rows.filter((r) => r.what === 'added')
    const changed = rows.filter((r) => r.what === 'changed')
    return {
      was: signsOn(before, [...removed, ...changed]),
      is: signsOn(after, [...added, ...changed]),
      ghosts: signsOn(before, removed),
    }
  }, [before, after, rows, removed])
  const [table, stacked] = useStacked(whole)
  const common = { picked: row?.key ?? null, frame, onFrame: change, onPick: pickRow }
  return (
    <section ref={table} className={`drawings ${shown}${stacked ? ' stacked' : ''}`} aria-label="Drawings">
      {shown === 'beside' && <Pane {...common} title={titles.before} scene={before} signs={signs.was} />}
      {shown === 'marked' && (
        <Pane
          {...common}
          title={`${titles.after}; broken and struck out: gone since ${titles.before}`}
          scene={after}
          gone={gone}
          signs={[...signs.ghosts, ...signs.is]}
        />
      )}
      {shown !== 'marked' && (
        <Pane {...common} title={titles.after} scene={after} signs={shown === 'alone' ? [] : signs.is} />
      )}
      <fieldset className="zoom" aria-label="Zoom">
        <button
          type="button"
          className="icon"
          aria-label="Nearer"
          onClick={() => change((f) => zoomed(f, 0.8))}
        >
          <ZoomIn size={18} aria-hidden />
        </button>
        <button
          type="button"
          className="icon"
          aria-label="Further away"
          onClick={() => change((f) => zoomed(f, 1.25))}
        >
          <ZoomOut size={18} aria-hidden />
        </button>
        <button type="button" className="icon" aria-label="Whole drawing" onClick={() => setFrame(whole)}>
          <Maximize2 size={18} aria-hidden />
        </button>
      </fieldset>
    </section>
  )
}
