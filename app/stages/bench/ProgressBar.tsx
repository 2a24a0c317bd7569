import type { BenchProgress } from '../../../engine'

interface Props {
  readonly progress: BenchProgress
  /** Of the whole design, in more words. */
  readonly whole?: boolean
}

/** How many conductors are finished, and how far the steps are. */
export function ProgressBar({ progress, whole = false }: Props) {
  const { finished, conductors, stepsDone, steps, again } = progress
  const words = whole ? `${finished} of ${conductors} conductors finished` : `${finished} / ${conductors}`
  return (
    <div className={whole ? 'bench-progress whole' : 'bench-progress'}>
      <progress
        max={Math.max(1, steps)}
        value={stepsDone}
        aria-label={whole ? 'Whole work' : 'This group'}
        aria-valuetext={`${stepsDone} of ${steps} steps`}
      />
      <span role={whole ? 'status' : undefined}>
        {words}
        {again > 0 && <b className="again">{whole ? `, ${again} to look at again` : `, ${again} again`}</b>}
      </span>
    </div>
  )
}
