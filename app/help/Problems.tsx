import type { Overlay } from '../store/view'
import { Sheet } from './Sheet'

interface Props {
  readonly overlay: Extract<Overlay, { readonly is: 'problems' }>
  readonly onClose: () => void
}

/** What is wrong with a file that was not opened. Nothing on the table has changed. */
export function Problems({ overlay: { file, problems, openAnyway }, onClose }: Props) {
  return (
    <Sheet
      title={`Problems in ${file}`}
      about="The file was not opened, and your design has not changed."
      onClose={onClose}
    >
      <ol className="problems">
        {problems.map((p, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a fixed list; a place may repeat
          <li key={i}>
            <code>{p.path || 'the file as a whole'}</code>: expected {p.expected}, found {p.found}.
          </li>
        ))}
      </ol>
      <div className="buttons">
        {openAnyway && (
          <button
            type="button"
            className="plain"
            onClick={() => {
              onClose()
              openAnyway()
            }}
          >
            Open what could be read
          </button>
        )}
        <button type="button" className="main" onClick={onClose}>
          Leave it
        </button>
      </div>
    </Sheet>
  )
}
