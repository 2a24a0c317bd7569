import { Ruler } from 'lucide-react'
import type { ReactNode } from 'react'
import { conductorById, partById } from '../../engine'
import { COMMANDS, type CommandKey } from '../store/commands'
import { useOpen } from '../store/open'
import { select } from '../store/view'
import { ManyPlace } from './ManyPlace'
import { RunFields } from './RunFields'

interface Props {
  readonly parts: readonly string[]
  readonly conductors: readonly string[]
}

/** Names shown of each; the head counts them all. */
const MOST = 24

const FOR_PARTS: readonly CommandKey[] = [
  'align-left',
  'align-right',
  'align-top',
  'align-bottom',
  'align-middle-x',
  'align-middle-y',
  'spread-x',
  'spread-y',
]

/** Several things at once: line them up, say where the parts are, or set a field on all conductors. */
export function ManyCard({ parts, conductors }: Props) {
  const design = useOpen((s) => s.design)
  const writing = useOpen((s) => s.hold === 'writing')
  const first = conductors.map((id) => conductorById(design, id)).find((c) => c !== undefined)
  return (
    <>
      <header>
        <h2>
          {count(parts.length, 'part')} {parts.length && conductors.length ? 'and ' : ''}
          {count(conductors.length, 'conductor')}
        </h2>
      </header>
      <p className="items">
        {parts.slice(0, MOST).map((id) => (
          <button key={id} type="button" className="link" onClick={() => select([id])}>
            {partById(design, id)?.designation}
          </button>
        ))}
        {conductors.slice(0, MOST).map((id) => (
          <button key={id} type="button" className="link" onClick={() => select([], [id])}>
            {conductorById(design, id)?.number}
          </button>
        ))}
      </p>
      <button type="button" className="plain" onClick={() => COMMANDS.size.run()}>
        <Ruler size={14} aria-hidden /> Size it…
      </button>
      {parts.length > 1 && (
        <fieldset className="align" aria-label="Line up">
          {FOR_PARTS.map((key) => (
            <button
              key={key}
              type="button"
              className="plain"
              disabled={!writing}
              onClick={() => COMMANDS[key].run()}
            >
              {COMMANDS[key].title}
            </button>
          ))}
        </fieldset>
      )}
      {parts.length > 1 && <ManyPlace parts={parts} />}
      {first && conductors.length > 1 && (
        <>
          <Note>What you set here is set on all {conductors.length} conductors.</Note>
          <RunFields conductor={first} all={conductors} />
        </>
      )}
    </>
  )
}

const Note = ({ children }: { children: ReactNode }) => <p className="quiet">{children}</p>

const count = (n: number, word: string): string => (n === 0 ? '' : `${n} ${word}${n === 1 ? '' : 's'}`)
