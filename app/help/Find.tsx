import { useState } from 'react'
import { type Answers, amountWords, type Conductor, type Design, figure, kindOf, sizeIn } from '../../engine'
import { terminalName } from '../store/join'
import { useLatest } from '../store/latest'
import { matching } from '../store/matching'
import { useOpen } from '../store/open'
import { lookAt, select, setStage } from '../store/view'
import { PickList } from './PickList'
import { Sheet } from './Sheet'

const AMONG = { all: 'Everything', parts: 'Parts', conductors: 'Conductors' } as const

/** Finds a part by designation, name, location or kind, and a conductor by number or ends; selects and shows it. */
export function Find({ onClose }: { onClose: () => void }) {
  const design = useOpen((s) => s.design)
  const answers = useLatest((s) => s.answers)
  const [among, setAmong] = useState<keyof typeof AMONG>('all')
  const parts = design.parts.map((p) => ({
    key: `part ${p.id}`,
    left: p.designation,
    text: p.name || kindOf(p.kind)?.title || p.kind,
    right: p.location,
  }))
  const conductors = design.conductors.map((c) => ({
    key: `run ${c.id}`,
    left: c.number,
    text: `${terminalName(c.from)} → ${terminalName(c.to)}`,
    right: runWords(design, c, answers),
  }))
  const items = [...(among === 'conductors' ? [] : parts), ...(among === 'parts' ? [] : conductors)]
  const pick = (key: string) => {
    const id = key.slice(key.indexOf(' ') + 1)
    onClose()
    setStage('drawing')
    if (key.startsWith('part')) {
      select([id])
      lookAt([id], [])
    } else {
      select([], [id])
      lookAt([], [id])
    }
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
        label="Part or conductor"
        placeholder="F3, W12, fridge…"
        none="No part or conductor is called that."
        most={1000}
        choices={(typed) => matching(typed, items, (i) => `${i.left} ${i.text} ${i.right}`)}
        onPick={pick}
      />
    </Sheet>
  )
}

/** "16 mm² · 1.2 m · 35 A" */
function runWords(design: Design, c: Conductor, answers: Answers | null): string {
  const run = answers?.runs.get(c.id)
  const current = run && run.nature !== 'data' && run.nature !== 'mains' && amountWords(run.design, 'A')
  const size = c.size === null ? '' : (sizeIn(design, c.size)?.name ?? c.size)
  const length = c.lengthM === null ? '' : figure(c.lengthM, 'm')
  return [size, length, current, c.remark].filter(Boolean).join(' · ')
}
