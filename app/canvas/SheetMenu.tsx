import { ContextMenu } from 'radix-ui'
import type { ReactNode } from 'react'
import { COMMANDS, type CommandKey } from '../store/commands'
import { useView } from '../store/view'

const ON_PARTS: readonly (CommandKey | '-')[] = [
  'join',
  'turn',
  'mirror',
  'outline',
  '-',
  'cut',
  'copy',
  'duplicate',
  'arrange-selected',
  'follow-single-line',
  '-',
  'remove',
  '-',
  'size',
  'closer',
]
const ON_RUNS: readonly (CommandKey | '-')[] = ['size', 'closer', 'free', '-', 'remove']
const ON_SHEET: readonly (CommandKey | '-')[] = ['cut', 'copy', 'duplicate', '-', 'remove']
const ON_PAPER: readonly (CommandKey | '-')[] = [
  'place',
  'write',
  'paste',
  '-',
  'all',
  'find',
  'arrange',
  'follow-single-line',
  'whole',
  '-',
  'undo',
  'redo',
]

/** The menu on the sheet: for the parts or conductors under the pointer, or for the paper. */
export function SheetMenu({ children, disabled }: { children: ReactNode; disabled: boolean }) {
  const parts = useView((s) => s.parts.size > 0)
  const runs = useView((s) => s.conductors.size > 0)
  const onSheet = useView((s) => s.zone !== null || s.texts.size > 0)
  const items = parts ? ON_PARTS : runs ? ON_RUNS : onSheet ? ON_SHEET : ON_PAPER
  return (
    <ContextMenu.Root>
      <ContextMenu.Trigger asChild disabled={disabled}>
        {children}
      </ContextMenu.Trigger>
      <ContextMenu.Portal>
        <ContextMenu.Content className="menu">
          {items.map((key, i) =>
            key === '-' ? (
              // biome-ignore lint/suspicious/noArrayIndexKey: a fixed list
              <ContextMenu.Separator key={i} />
            ) : (
              <ContextMenu.Item
                key={key}
                disabled={COMMANDS[key].off?.() ?? false}
                onSelect={() => setTimeout(COMMANDS[key].run)}
              >
                {COMMANDS[key].title}
                {COMMANDS[key].keys[0] && <kbd>{COMMANDS[key].keys[0]}</kbd>}
              </ContextMenu.Item>
            ),
          )}
        </ContextMenu.Content>
      </ContextMenu.Portal>
    </ContextMenu.Root>
  )
}
