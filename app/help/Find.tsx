import { useState } from 'react'
import { useLatest } from '../store/latest'
import { matching } from '../store/matching'
import { useOpen } from '../store/open'
import { setStage } from '../store/view'
import { conductorsIn, onSheetIn, partsIn } from './findable'
import { PickList } from './PickList'
import { Sheet } from './Sheet'

const AMONG = {
  all: 'Everything',
  parts: 'Parts',
  conductors: 'Conductors',
  sheet: 'Outlines and texts',
} as const

/**
 * Finds a part by designation, name, location or kind, a conductor by number or ends, an outline or a text by its
 * words; selects and shows it.
 */
export function Find({ onClose }: { onClose: () => void }) {
  const design = useOpen((s) => s.design)
  const answers = useLatest((s) => s.answers)
  const [among, setAmong] = useState<keyof typeof AMONG>('all')
  const isAmong = (key: keyof typeof AMONG) => among === 'all' || among === key
  const items = [
    ...(isAmong('parts') ? partsIn(design) : []),
    ...(isAmong('conductors') ? conductorsIn(design, answers) : []),
    ...(isAmong('sheet') ? onSheetIn(design) : []),
  ]
  const pick = (key: string) => {
    onClose()
    setStage('drawing')
    items.find((i) => i.key === key)?.show()
  }
  return (
    <Sheet title="Find" narrow onClose={onClose}>
      <fieldset className="scope" aria-label="Look among">
        {Object.entries(AMONG).map(([key, text]) => (
          <label key={key}>
            <input
              type="radio"
              name="among"
              checked={among === key}
              onChange={() => setAmong(key as keyof typeof AMONG)}
            />
            {text}
          </label>
        ))}
      </fieldset>
      <PickList
        label="Part, conductor, outline or text"
        placeholder="F3, W12, fridge…"
        none="Nothing on the sheet is called that."
        most={1000}
        choices={(typed) => matching(typed, items, (i) => `${i.left} ${i.text} ${i.right}`)}
        onPick={pick}
      />
    </Sheet>
  )
}
