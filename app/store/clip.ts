import { doEdit } from './open'
import { clearSelection, useView } from './view'
export const copy = () => {}
export const cut = () => {}
export const pasteHere = () => {}
export const duplicate = () => {}
export function removeSelected(): void {
  const { parts, conductors } = useView.getState()
  if (doEdit('Delete', { do: 'remove', parts: [...parts], conductors: [...conductors] })) clearSelection()
}
