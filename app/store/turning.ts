import { doEdit } from './open'
import { useView } from './view'

const selected = () => [...useView.getState().parts]
const many = (did: string, n: number) => (n === 1 ? `${did} part` : `${did} ${n} parts`)

export function turnSelected(): void {
  const parts = selected()
  if (parts.length) doEdit(many('Turn', parts.length), { do: 'turn', parts, by: 90 })
}

export function mirrorSelected(): void {
  const parts = selected()
  if (parts.length) doEdit(many('Mirror', parts.length), { do: 'mirror', parts })
}
