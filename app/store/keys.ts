import { backToDrawing } from '../tryit/trial'
import { COMMANDS, type Command } from './commands'
import { nudge } from './nudge'
import { useView } from './view'

const LABELS: Readonly<Record<string, string>> = {
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  Escape: 'Esc',
}

/** A key press in the words of the shown list: "Ctrl Shift Z", "P", "?". */
export function keyLabel(e: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey'>): string {
  const key = LABELS[e.key] ?? (e.key.length === 1 ? e.key.toUpperCase() : e.key)
  const letter = /^[A-Z]$/.test(key)
  return [e.ctrlKey || e.metaKey ? 'Ctrl' : '', e.shiftKey && letter ? 'Shift' : '', key]
    .filter(Boolean)
    .join(' ')
}

const BY_KEY = new Map<string, Command>(
  Object.values<Command>(COMMANDS).flatMap((c) => c.keys.map((k) => [k, c] as const)),
)

/** Keys count only while nobody is typing and nothing lies over the drawing. */
export function watchKeys(): () => void {
  const onKey = (e: KeyboardEvent) => {
    const target = e.target as HTMLElement
    const { trying, overlay, stage } = useView.getState()
    if (stage === 'drawing' && trying && !overlay && e.key === 'Escape') {
      backToDrawing()
      return
    }
    if (overlay || target.closest('input, select, textarea, [role="menu"], dialog')) {
      if (e.key === 'Escape' && target.closest('.card')) (target as HTMLElement).blur()
      return
    }
    const onButton = target.closest('button, a, summary, [role="radio"]')
    if (onButton && (e.key === 'Enter' || e.key === ' ')) return
    if (e.altKey) return
    if (stage === 'drawing' && e.shiftKey && e.key.startsWith('Arrow')) {
      e.preventDefault()
      const far = 4
      nudge(...(FAR[e.key] ?? [0, 0]), far)
      return
    }
    const command = BY_KEY.get(keyLabel(e))
    if (!command) return
    if (stage === 'drawing' ? trying && command.group !== 'Seeing' : !command.everywhere) return
    e.preventDefault()
    if (!command.off?.()) command.run()
  }
  window.addEventListener('keydown', onKey)
  return () => window.removeEventListener('keydown', onKey)
}

const FAR: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
}
