import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isReadable, type Lettered, letteringZoom, wordsAt } from '../../app/canvas/density'
import { wordsBesideParts } from '../../app/canvas/designations'
import { edgeToLine, edgeToPart, leaderAlong, standsApart } from '../../app/canvas/hugging'
import { PX } from '../../app/canvas/scale'
import { type Scene, type SceneLabel, type TextMark, widthOf } from '../../engine'

const text = (words: string, x: number, y: number, height: number, bold = false): TextMark => ({
  is: 'text',
  at: [x, y],
  text: words,
  height,
  ...(bold ? { weight: 'bold' } : {}),
})

/** "F3 Loads" with one line of ratings, in the room that the layout keeps for two lines. */
const ofPart: Lettered = {
  of: { part: 'p' },
  marks: [
    text('F3', 0, 2.9, 2.5, true),
    text(' Loads', widthOf('F3', 2.5, 'bold'), 2.9, 2.5),
    text('100 A, 6 ways of a block', 0, 5.9, 1.8),
  ],
  w: widthOf('100 A, 6 ways of a block', 1.8),
  h: 6.45,
  hugs: 'bottom',
  leaderAt: null,
}
const ofRun: Lettered = {
  of: { conductor: 'w' },
  marks: [
    text('W12', 0, 2, 1.8, true),
    text(' · 16 mm² RD · 2.4 m', 4, 2, 1.8),
    text('max 80 A', 0, 4.8, 1.8),
  ],
  w: 30,
  h: 5.4,
  hugs: 'top',
  leaderAt: null,
}
const said = (label: Lettered, zoom: number) => wordsAt(label, zoom).map((t) => t.text.trim())

describe('words at a zoom', () => {
  it('shows everything while everything can be read', () => {
    expect(said(ofPart, 1)).toEqual(['F3', 'Loads', '100 A, 6 ways of a block'])
    expect(said(ofRun, 1)).toHaveLength(3)
  })
  it('drops captions first, then names, and keeps the designation', () => {
    expect(said(ofPart, 0.8)).toEqual(['F3', 'Loads'])
    expect(said(ofPart, 0.28)).toEqual(['F3'])
  })
  it('keeps the number of a conductor for a while, then nothing', () => {
    expect(said(ofRun, 0.7)).toEqual(['W12'])
    expect(said(ofRun, 0.3)).toEqual([])
  })
  it('never cuts words that stand apart from their line to a bare number', () => {
    expect(said({ ...ofRun, apart: true }, 1)).toHaveLength(3)
    expect(said({ ...ofRun, apart: true }, 0.7)).toEqual([])
    const label: SceneLabel = { ...ofRun, x: 10, y: 10, turn: 0, leader: null }
    const line = (y: number) => ({
      points: [
        [0, y],
        [60, y],
      ] as const,
    })
    expect(standsApart(label, line(16))).toBe(false)
    expect(standsApart(label, line(25))).toBe(true)
    expect(
      standsApart(
        {
          ...label,
          leader: [
            [20, 15.4],
            [20, 25],
          ],
        },
        line(25),
      ),
    ).toBe(false)
  })
  it('letters what is kept so that it can be read, inside the room of the label', () => {
    for (const zoom of [0.9, 0.7, 0.55, 0.4, 0.33])
      for (const label of [ofPart, ofRun])
        for (const t of wordsAt(label, zoom)) {
          expect(isReadable(t.height, zoom)).toBe(true)
          expect(t.at[0] + widthOf(t.text, t.height, t.weight)).toBeLessThanOrEqual(label.w + 1e-6)
          expect(t.at[1] - t.height).toBeGreaterThanOrEqual(-1e-6)
          expect(t.at[1]).toBeLessThanOrEqual(label.h)
        }
  })
  it('stands at the edge that faces what it names, and at the leader', () => {
    const y = (hugs: 'top' | 'bottom') => wordsAt({ ...ofPart, hugs }, 0.5)[0]!.at[1]
    expect(y('bottom')).toBeGreaterThan(y('top'))
    const x = (leaderAt: number) => wordsAt({ ...ofRun, leaderAt }, 0.7)[0]!.at[0]
    expect(x(1)).toBeGreaterThan(x(0))
  })
  it('letters for the zoom at hand or a smaller one, so never too small', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 4, noNaN: true }), (zoom) => {
        const step = letteringZoom(zoom, null)
        return step <= zoom * 1.001 && step > zoom / 1.2
      }),
    )
  })
  it('does not flicker at the edge of a step', () => {
    const edge = 0.5
    const at = letteringZoom(edge, null)
    expect(letteringZoom(edge * 0.99, at)).toBe(at)
    const below = letteringZoom(edge * 0.95, at)
    expect(below).toBeLessThan(at)
    expect(letteringZoom(edge * 1.01, below)).toBe(below)
    expect(letteringZoom(edge * 1.05, below)).toBe(at)
  })
})

describe('the edge that faces what a label names', () => {
  const label: SceneLabel = {
    ...ofRun,
    of: { conductor: 'w' },
    x: 10,
    y: 10,
    w: 20,
    h: 5,
    turn: 0,
    leader: null,
  }
  it('is found for lines above, below and beside', () => {
    const line = (y: number) => ({
      points: [
        [0, y],
        [50, y],
      ] as const,
    })
    expect(edgeToLine(label, line(16))).toBe('bottom')
    expect(edgeToLine(label, line(9))).toBe('top')
    // Turned, it reads upwards: its lower edge is on the right.
    const upright = {
      points: [
        [16, -40],
        [16, 40],
      ] as const,
    }
    expect(edgeToLine({ ...label, turn: 90 }, upright)).toBe('bottom')
  })
  it('is found for parts', () => {
    expect(edgeToPart(label, { y: 20, h: 10 })).toBe('bottom')
    expect(edgeToPart(label, { y: -20, h: 10 })).toBe('top')
  })
  it('knows where a leader meets it', () => {
    expect(leaderAlong(label)).toBeNull()
    expect(
      leaderAlong({
        ...label,
        leader: [
          [30, 15],
          [60, 60],
        ],
      }),
    ).toBe(1)
    expect(
      leaderAlong({
        ...label,
        leader: [
          [0, 60],
          [10, 15],
        ],
      }),
    ).toBe(0)
  })
})

it('a millimetre has the px that the sheet is drawn with', () => {
  expect(isReadable(7 / PX, 1)).toBe(true)
  expect(isReadable(6 / PX, 1)).toBe(false)
})

it('far out, a designation grows beyond its label where it meets neither part nor designation', () => {
  const label = (part: string, y: number): SceneLabel => ({
    of: { part },
    marks: [text('E1', 0, 2.9, 2.5, true)],
    x: 12,
    y,
    w: 3.5,
    h: 3.75,
    turn: 0,
    leader: null,
  })
  const part = (id: string, y: number) => ({ id, x: 0, y, w: 10, h: 5, marks: [] })
  const scene = (second: number): Scene => ({
    view: 'both-poles',
    parts: [part('a', 0), part('b', second)],
    conductors: [],
    joins: [],
    outlines: [],
    texts: [],
    labels: [label('a', 0), label('b', second)],
    box: { x: 0, y: 0, w: 30, h: 60 },
  })
  const heights = (s: Scene) => [...wordsBesideParts(s, 0.2).values()].map((t) => t[0]?.height ?? 0)
  expect(heights(scene(40)).every((h) => isReadable(h, 0.2))).toBe(true)
  // Too near to one another for both.
  expect(heights(scene(5)).filter((h) => isReadable(h, 0.2))).toHaveLength(1)
})

it('names of all parts come and go at the same zoom, however wide their captions are', () => {
  const narrow: Lettered = { ...ofPart, marks: ofPart.marks.slice(0, 2), w: 9, h: 3.75 }
  for (const zoom of [0.9, 0.75, 0.65, 0.59, 0.4])
    expect(said(narrow, zoom).includes('Loads')).toBe(said(ofPart, zoom).includes('Loads'))
})
