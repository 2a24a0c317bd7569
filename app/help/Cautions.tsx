import { CAUTIONS, LAST_WORD, ruleSetByKey } from '../../engine'
import { useOpen } from '../store/open'
import { Sheet } from './Sheet'

export function Cautions({ onClose }: { onClose: () => void }) {
  const key = useOpen((s) => s.design.settings.ruleSet)
  const set = ruleSetByKey(key)
  return (
    <Sheet title="Cautions" about={LAST_WORD} narrow onClose={onClose}>
      <ul className="cautions">
        {CAUTIONS.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      {set && (
        <p className="quiet">
          Checks of this design use: {set.title}, {set.edition}.
        </p>
      )}
    </Sheet>
  )
}
