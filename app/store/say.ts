import { create } from 'zustand'

/** What was just said to the person: read out in the live region, and shown near the pointer when refused. */
interface SayState {
  readonly text: string
  readonly refused: boolean
  readonly at: { readonly x: number; readonly y: number } | null
  readonly n: number
}

export const useSay = create<SayState>(() => ({ text: '', refused: false, at: null, n: 0 }))

let pointer = { x: 0, y: 0 }

/** Remembers where the pointer is on the page, CSS px, so that a refusal can stand beside it. */
export function watchPointer(): void {
  window.addEventListener('pointermove', (e) => (pointer = { x: e.clientX, y: e.clientY }), { passive: true })
}

export const say = (text: string) => useSay.setState((s) => ({ text, refused: false, at: null, n: s.n + 1 }))

export const refuse = (why: string) =>
  useSay.setState((s) => ({ text: why, refused: true, at: { ...pointer }, n: s.n + 1 }))
