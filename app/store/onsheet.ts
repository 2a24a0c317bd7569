import {
  type Edit,
  moveZoneEdit,
  nextId,
  outlineEdit,
  resizeZoneEdit,
  type SheetText,
  type Zone,
} from '../../engine'
import { usePointer } from './hand'
import { doEdit, useOpen } from './open'
import { say } from './say'
import { inThisView, seenDesign } from './seen'
import { clearSelection, select, selectZone, setPen, useView } from './view'

/** Outlines and texts on the sheet: what commands and the hand do to them. */

export const zoneById = (id: string | null): Zone | undefined =>
  useOpen.getState().design.zones?.find((z) => z.id === id)

export const textById = (id: string): SheetText | undefined =>
  useOpen.getState().design.texts?.find((t) => t.id === id)

/** Outlines the selected parts; the name waits on the card to be written over. */
export function outlineSelected(): void {
  const { design } = useOpen.getState()
  const edit = outlineEdit(design, useView.getState().parts)
  if (!doEdit(`Outline ${edit.zone.name}`, edit)) return
  selectZone(edit.zone.id)
  say(
    `Outline ${edit.zone.name}, round ${edit.zone.parts.length === 1 ? '1 part' : `${edit.zone.parts.length} parts`}.`,
  )
  setTimeout(() => document.querySelector<HTMLInputElement>('#zone-name')?.select(), 60)
}

export function removeZone(id: string): void {
  const zone = zoneById(id)
  if (zone && doEdit(`Delete outline ${zone.name}`, { do: 'unzone', id })) {
    clearSelection()
    say(`Outline ${zone.name} deleted; its parts stay.`)
  }
}

export function moveZone(zone: Zone, dx: number, dy: number): void {
  if (dx !== 0 || dy !== 0)
    doEdit(`Move outline ${zone.name}`, inThisView(moveZoneEdit(seenDesign(), zone, dx, dy)))
}

export function resizeZone(zone: Zone, x: number, y: number, w: number, h: number): void {
  // In a view of its own layout an outline stands elsewhere: what its edges move by is what counts.
  const seen = seenDesign().zones?.find((z) => z.id === zone.id) ?? zone
  const wanted = {
    x: zone.x + x - seen.x,
    y: zone.y + y - seen.y,
    w: zone.w + w - seen.w,
    h: zone.h + h - seen.h,
  }
  const edit = resizeZoneEdit(useOpen.getState().design, zone, wanted)
  doEdit(`Resize outline ${zone.name}`, edit)
}

const GRID = 2.5

/** Moves the lower right corner of the selected outline by grid steps. */
export function stretchZone(right: number, down: number): void {
  const zone = zoneById(useView.getState().zone)
  if (!zone) return
  const [w, h] = [zone.w + right * GRID, zone.h + down * GRID]
  if (w >= GRID && h >= GRID) resizeZone(zone, zone.x, zone.y, w, h)
}

/** Takes up the pen: at the pointer, else in the middle of what is in sight. */
export function writeHere(): void {
  setPen({ id: null, at: usePointer.getState().at ?? useView.getState().middle })
}

/** Puts the pen down. Nothing written: a new text is not made, an old one is taken off. */
export function writeDown(words: string): void {
  const { pen, view } = useView.getState()
  setPen(null)
  if (!pen) return
  const { design } = useOpen.getState()
  const before = pen.id === null ? undefined : textById(pen.id)
  if (words.trim() === '') {
    if (before) removeTexts([before.id])
    return
  }
  const fresh = { id: nextId(design, 't'), view, x: pen.at[0], y: pen.at[1] }
  const text = { ...(before ?? fresh), text: words }
  if (before?.text === words) return
  if (doEdit(before ? 'Rewrite text' : 'Write on the sheet', { do: 'text', text })) select([], [], [text.id])
}

export function removeTexts(ids: readonly string[]): void {
  if (doEdit(ids.length === 1 ? 'Delete text' : `Delete ${ids.length} texts`, { do: 'untext', ids })) {
    clearSelection()
    say(ids.length === 1 ? 'Text deleted.' : `${ids.length} texts deleted.`)
  }
}

/** Edits that move texts. */
export const moveTexts = (ids: Iterable<string>, dx: number, dy: number): Edit[] =>
  [...ids].flatMap((id) => {
    const text = textById(id)
    return text ? [{ do: 'text', text: { ...text, x: text.x + dx, y: text.y + dy } } as const] : []
  })
