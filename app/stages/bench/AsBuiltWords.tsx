import {
  type BenchCard,
  BUILT_WORDS,
  builtWords,
  type Finding,
  figure,
  isThinner,
  sentence,
} from '../../../engine'
import { LevelMark } from '../../panels/LevelMark'
import { useBuilt } from '../../store/built'
import { useOpen } from '../../store/open'
import { showView } from './looking'

/** ", 11.4 % against 10 %"; nothing where there are no figures. */
const against = ({ actual, limit }: Finding): string =>
  actual && limit ? `, ${figure(actual.value, actual.unit)} against ${figure(limit.value, limit.unit)}` : ''

/** What was built otherwise on this conductor, and what the checks say of it as built. */
export function AsBuiltWords({ card }: { card: BenchCard }) {
  const design = useOpen((s) => s.design)
  const { built, of, failure } = useBuilt()
  const { differences, conductor } = card
  if (differences.length === 0) return null
  const thinner = differences.some((d) => isThinner(design, d))
  const worse = built?.worse.filter((f) => f.conductors.includes(conductor.id)) ?? []
  const settled = of === design || built !== null
  return (
    <section className={`as-built${thinner || worse.length > 0 ? ' alarming' : ''}`} role="alert">
      {differences.map((d) => (
        <p key={d.what}>
          <b>Built otherwise.</b> {BUILT_WORDS[d.what]}: drawn {builtWords(design, d.what, d.drawn)}, built{' '}
          <b>{builtWords(design, d.what, d.built)}</b>.
        </p>
      ))}
      {thinner && (
        <p className="worse">
          <LevelMark level="warning" size={22} /> As built: thinner than drawn. Ask the designer before it is
          used.
        </p>
      )}
      {built &&
        worse.map((f) => (
          <p key={f.key} className="worse">
            <LevelMark level={f.level} size={22} /> As built: {sentence(f, built.design).title}
            {against(f)}.
          </p>
        ))}
      {worse.length > 0 && (
        <button type="button" className="link" onClick={() => showView('otherwise')}>
          What the checks say as built
        </button>
      )}
      {failure && <p className="worse">As built: not checked. The checks broke off: {failure}</p>}
      {!settled && !failure && <p>As built: being checked…</p>}
    </section>
  )
}
