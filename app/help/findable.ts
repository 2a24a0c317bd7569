import {
  type Answers,
  amountWords,
  type Conductor,
  type Design,
  figure,
  kindOf,
  sceneText,
  sizeIn,
} from '../../engine'
import { terminalName } from '../store/join'
import { textById, zoneById } from '../store/onsheet'
import { seenDesign } from '../store/seen'
import { lookAt, lookAtBox, select, selectZone, setView, useView } from '../store/view'

/** One thing that can be found, in a few words, and how it is shown. */
export interface Findable {
  readonly key: string
  readonly left: string
  readonly text: string
  readonly right: string
  readonly show: () => void
}

export const partsIn = ({ parts }: Design): Findable[] =>
  parts.map((p) => ({
    key: `part ${p.id}`,
    left: p.designation,
    text: p.name || kindOf(p.kind)?.title || p.kind,
    right: p.location,
    show: () => {
      select([p.id])
      lookAt([p.id], [])
    },
  }))

export const conductorsIn = (design: Design, answers: Answers | null): Findable[] =>
  design.conductors.map((c) => ({
    key: `run ${c.id}`,
    left: c.number,
    text: `${terminalName(c.from)} → ${terminalName(c.to)}`,
    right: runWords(design, c, answers),
    show: () => {
      select([], [c.id])
      lookAt([], [c.id])
    },
  }))

/** Outlines by their names, texts by their words. */
export const onSheetIn = ({ zones = [], texts = [] }: Design): Findable[] => [
  ...zones.map((z) => ({
    key: `zone ${z.id}`,
    left: 'Outline',
    text: z.name,
    right: z.parts.length === 1 ? '1 part' : `${z.parts.length} parts`,
    show: () => {
      const there = seenDesign().zones?.find((s) => s.id === z.id)
      if (!zoneById(z.id) || !there) return
      selectZone(z.id)
      lookAtBox(there)
    },
  })),
  ...texts.map((t) => ({
    key: `text ${t.id}`,
    left: 'Text',
    text: t.text.replaceAll('\n', ' · '),
    right: '',
    show: () => {
      const now = textById(t.id)
      if (!now) return
      if (now.view !== 'all' && now.view !== useView.getState().view) setView(now.view)
      select([], [], [t.id])
      lookAtBox(sceneText(now))
    },
  })),
]

/** "16 mm² · 1.2 m · 35 A" */
function runWords(design: Design, c: Conductor, answers: Answers | null): string {
  const run = answers?.runs.get(c.id)
  const current = run && run.nature !== 'data' && run.nature !== 'mains' && amountWords(run.design, 'A')
  const size = c.size === null ? '' : (sizeIn(design, c.size)?.name ?? c.size)
  const length = c.lengthM === null ? '' : figure(c.lengthM, 'm')
  return [size, length, current, c.remark].filter(Boolean).join(' · ')
}
