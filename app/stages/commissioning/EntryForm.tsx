import { type FormEvent, useState } from 'react'
import type { ReadingRecord, TestStep } from '../../../engine'
import { readNumber } from '../../panels/readnumber'
import { useOpen } from '../../store/open'
import { draftOf, dropDraft, keepDraft } from './drafts'
import { enter } from './record'

interface Props {
  readonly step: TestStep
  readonly record: ReadingRecord
  readonly name: string
}

/** Where a reading is entered: a figure, whether it is so, or a judgement in words. Every entry is added, none replaced. */
export function EntryForm({ step, record, name }: Props) {
  const writing = useOpen((s) => s.hold === 'writing')
  const { expected, reading } = record
  const draft = `${useOpen((s) => s.design.id)}\n${step.key}\n${reading.key}`
  const [text, setText] = useState(() => draftOf(draft).text)
  const [remark, setRemark] = useState(() => draftOf(draft).remark)
  const [wrong, setWrong] = useState<string | null>(null)
  const isKnown = expected.is !== 'not-known'
  const isFigure = expected.is === 'figure' || (!isKnown && reading.asks !== 'so')

  const figure = (): number | null | undefined => {
    const read = readNumber(text.replace('−', '-'), {})
    const missing = isKnown && read.value === null ? 'Enter what was measured' : null
    setWrong(read.wrong ?? missing)
    return read.wrong === null && missing === null ? read.value : undefined
  }
  const add = (entered: { found: number | boolean | null; judged?: 'good' | 'bad' }) => {
    if (!isKnown && remark.trim() === '') setWrong('Write down in words why it is good, or not')
    else {
      const result = enter(step, record, { ...entered, remark })
      if (!result) return
      dropDraft(draft)
      goOn(reading.key, result === 'passed')
    }
  }
  const judge = (judged: 'good' | 'bad') => {
    const found = isFigure ? figure() : null
    if (found !== undefined) add({ found, judged })
  }
  const submit = (e: FormEvent) => {
    e.preventDefault()
    if (!isKnown || !isFigure) return
    const found = figure()
    if (found !== undefined) add({ found })
  }
  const remarkLabel = isKnown ? 'Remark' : 'Why it is good, or not, in words'
  return (
    <form className="test-entry" onSubmit={submit} noValidate>
      {isFigure && (
        <label className="found">
          <span>{isKnown ? 'Measured' : 'Measured, if there is a figure'}</span>
          <span className="with-unit">
            <input
              data-reading={reading.key}
              inputMode="text"
              autoComplete="off"
              enterKeyHint="done"
              aria-label={`${name}, measured`}
              aria-invalid={wrong !== null}
              value={text}
              disabled={!writing}
              onChange={(e) => {
                setText(e.target.value)
                keepDraft(draft, { text: e.target.value, remark })
                setWrong(null)
              }}
            />
            <span className="unit">
              {expected.is === 'figure' ? expected.unit : UNITS[reading.instrument]}
            </span>
          </span>
        </label>
      )}
      <label className="remark">
        <span>{remarkLabel}</span>
        <input
          autoComplete="off"
          maxLength={2000}
          value={remark}
          disabled={!writing}
          onChange={(e) => {
            setRemark(e.target.value)
            keepDraft(draft, { text, remark: e.target.value })
            setWrong(null)
          }}
        />
      </label>
      <div className="buttons">
        {isKnown && isFigure && (
          <button type="submit" className="main" disabled={!writing}>
            Enter
          </button>
        )}
        {isKnown && !isFigure && (
          <>
            <button
              type="button"
              className="main"
              data-reading={reading.key}
              disabled={!writing}
              onClick={() => add({ found: true })}
            >
              As described
            </button>
            <button type="button" className="plain" disabled={!writing} onClick={() => add({ found: false })}>
              Not as described
            </button>
          </>
        )}
        {!isKnown && (
          <>
            <button type="button" className="main" disabled={!writing} onClick={() => judge('good')}>
              I judge it good
            </button>
            <button type="button" className="plain" disabled={!writing} onClick={() => judge('bad')}>
              Not good
            </button>
          </>
        )}
      </div>
      {wrong && (
        <p className="wrong" role="alert">
          {wrong}.
        </p>
      )}
    </form>
  )
}

/** What an instrument measures in, where nothing is known to expect. */
const UNITS: Readonly<Record<string, string>> = {
  voltmeter: 'V',
  'adjustable-supply': 'V',
  ohmmeter: 'Ω',
  clamp: 'A',
  display: '',
}

/** After a pass on to the next reading of the step, or to the next step; after a fail it is taken again. */
function goOn(key: string, passed: boolean): void {
  requestAnimationFrame(() => {
    const all = [...document.querySelectorAll<HTMLElement>('.commissioning [data-reading]')]
    const here = all.findIndex((e) => e.dataset.reading === key)
    const next = all[passed ? here + 1 : here]
    const target = next ?? document.querySelector<HTMLElement>('.commissioning .test-next')
    target?.focus()
  })
}
