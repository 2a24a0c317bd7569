import { netsOf } from '../edit/nets'
import type { BenchStep, BuiltWhat, WorkedOn } from '../model/bench'
import type { Design } from '../model/design'
import { partById } from '../model/lookup'
import { sizeIn } from '../model/sizes'
import { colourName } from '../tables/colours'
import { formWords } from './forms'
import { conductorName, figure } from './names'
import { textFact, type Wording } from './sentence'

/** Steps of the bench, as they are ticked. */
export const STEP_WORDS: Readonly<Record<BenchStep, string>> = {
  cut: 'Cut',
  crimped: 'Crimped',
  labelled: 'Labelled',
  terminated: 'Terminated',
  torqued: 'Torqued',
}

/** What can be recorded as built otherwise, and what decides a step. */
export const BUILT_WORDS: Readonly<Record<BuiltWhat | keyof WorkedOn | 'number', string>> = {
  size: 'Size',
  lengthM: 'Length',
  from: 'From',
  to: 'To',
  note: 'Remark of the workshop',
  colour: 'Colour',
  fromForm: 'Form of the terminal, from',
  toForm: 'Form of the terminal, to',
  number: 'Number',
}

type Value = string | number | { readonly part: string; readonly terminal: string } | null | undefined

/** A value as recorded, in words: "6 mm²", "2.4 m", "F5 Loads block, way 4"; null: "not stated". */
export function builtWords(design: Design, what: keyof typeof BUILT_WORDS, value: Value): string {
  if (value === null || value === undefined || value === '') return 'not stated'
  if (typeof value === 'object') return endWords(design, value)
  if (what === 'lengthM') return figure(Number(value), 'm')
  if (what === 'size') return sizeIn(design, String(value))?.name ?? String(value)
  if (what === 'colour') return `${value} ${colourName(String(value))}`
  return what === 'fromForm' || what === 'toForm' ? formWords(String(value)) : String(value)
}

function endWords(design: Design, end: { readonly part: string; readonly terminal: string }): string {
  const part = partById(design, end.part)
  if (!part) return 'a part that is not in the drawing any more'
  const terminal = netsOf(design).terminal(end)
  const name = part.name === '' ? part.designation : `${part.designation} ${part.name}`
  return `${name}, ${terminal && terminal.name !== '' ? terminal.name : end.terminal}`
}

export const benchWords: Readonly<Record<string, Wording>> = {
  A2: (f) => {
    const number = textFact(f, 'number') || 'A conductor'
    const fastened = textFact(f, 'fastened') === 'true'
    return {
      title: 'Made, but not in the drawing any more',
      text: `${number} is recorded as ${fastened ? 'terminated' : 'begun'} by the workshop, but the drawing does not have it any more. ${fastened ? 'It may hang in the vehicle, and no figure reckons with it.' : 'No figure reckons with it.'}`,
      todo: fastened
        ? 'Have it taken out, or draw it again.'
        : 'Put it aside at the bench, or draw it again.',
    }
  },
  A1: (f, d) => {
    const what = textFact(f, 'what') as BuiltWhat
    const read = (fact: string): Value => {
      const text = textFact(f, fact)
      if (what !== 'from' && what !== 'to') return text
      const slash = text.indexOf('/')
      return { part: text.slice(0, slash), terminal: text.slice(slash + 1) }
    }
    const number = conductorName(d, textFact(f, 'conductor'))
    const thinner = textFact(f, 'thinner') === 'true'
    return {
      title: thinner ? 'Built thinner than drawn' : 'Built otherwise than drawn',
      text: `${number} is drawn with ${(BUILT_WORDS[what] ?? '').toLowerCase()}: ${builtWords(d, what, read('drawn'))}. The workshop has built it with ${builtWords(d, what, read('built'))}. The other findings speak of the drawing; what the checks say as built stands on the bench page.`,
      todo: 'Look at the checks as built. Then draw it as it was built, or have it built as drawn.',
    }
  },
}
