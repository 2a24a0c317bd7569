import { type ConductorId, canReconnect, conductorById } from '../../engine'
import { terminalName } from '../store/join'
import { doEdit, useOpen } from '../store/open'
import { Sheet } from './Sheet'
import { TerminalPick } from './TerminalPick'

interface Props {
  readonly conductor: ConductorId
  readonly end: 'from' | 'to'
  readonly onClose: () => void
}

/** Takes one end of a conductor to another terminal; its size, length and number stay. */
export function Reconnect({ conductor: id, end, onClose }: Props) {
  const design = useOpen((s) => s.design)
  const conductor = conductorById(design, id)
  if (!conductor) return null
  return (
    <Sheet
      title={`Take ${conductor.number} from ${terminalName(conductor[end])} to …`}
      narrow
      onClose={onClose}
    >
      <TerminalPick
        except={null}
        refusal={(to) => canReconnect(design, id, end, to)}
        onPick={(to) => {
          onClose()
          doEdit(`Take ${conductor.number} to ${terminalName(to)}`, {
            do: 'reconnect',
            conductor: id,
            end,
            to,
          })
        }}
      />
    </Sheet>
  )
}
