import { X } from 'lucide-react'
import { Dialog } from 'radix-ui'
import type { ReactNode } from 'react'

interface Props {
  readonly title: string
  readonly about?: string
  readonly narrow?: boolean
  readonly onClose: () => void
  readonly children: ReactNode
}

/** A sheet of paper laid over the table: every dialog of the product. */
export function Sheet({ title, about, narrow = false, onClose, children }: Props) {
  return (
    <Dialog.Root open onOpenChange={(open) => !open && onClose()}>
      <Dialog.Portal>
        <Dialog.Overlay className="over-overlay" />
        <Dialog.Content
          className={`over${narrow ? ' narrow' : ''}`}
          {...(about ? {} : { 'aria-describedby': undefined })}
        >
          <header>
            <Dialog.Title>{title}</Dialog.Title>
            <Dialog.Close asChild>
              <button type="button" className="icon" aria-label="Close">
                <X size={18} aria-hidden />
              </button>
            </Dialog.Close>
          </header>
          {about && <Dialog.Description className="quiet">{about}</Dialog.Description>}
          {children}
        </Dialog.Content>
      </Dialog.Portal>
    </Dialog.Root>
  )
}
