import { Lock, LockOpen } from 'lucide-react'

interface Props {
  readonly locked: boolean
  readonly disabled: boolean
  readonly onChange: (locked: boolean) => void
}

/** Beside the size: locked, it is the designer's own choice, and sizing leaves it. */
export function SizeLock({ locked, disabled, onChange }: Props) {
  return (
    <button
      type="button"
      className="icon small lock"
      aria-pressed={locked}
      aria-label="Locked"
      title={locked ? 'Locked: "Size it" leaves this size as it is' : 'Lock this size against "Size it"'}
      disabled={disabled}
      onClick={() => onChange(!locked)}
    >
      {locked ? <Lock size={15} aria-hidden /> : <LockOpen size={15} aria-hidden />}
    </button>
  )
}
