import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { coarseness } from '../../../app/canvas/coarse'
import { PX } from '../../../app/canvas/scale'
import { LENS_KEYS, LENSES } from '../../../app/lenses/lens'
import type { Look } from '../../../app/lenses/look'

/** Inks by theme, as the style sheet has them. */
const css = readFileSync('app/theme/tokens.css', 'utf8')
const [light = '', dark = ''] = css.split(':root[data-theme="dark"]')
const ink = (theme: string, name: string): RGB => {
  const [, hex] = new RegExp(`--${name}: #([0-9a-f]{6})`).exec(theme) ?? []
  if (!hex) throw new Error(`no ink ${name}`)
  return [0, 2, 4].map((i) => toLinear(Number.parseInt(hex.slice(i, i + 2), 16) / 255)) as unknown as RGB
}

type RGB = readonly [number, number, number]
/** sRGB transfer function: IEC 61966-2-1. */
const toLinear = (v: number): number => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4)
/** Relative luminance and contrast ratio: WCAG 2.2. */
const luminance = ([r, g, b]: RGB): number => 0.2126 * r + 0.7152 * g + 0.0722 * b
const contrast = (a: RGB, b: RGB): number => {
  const [hi, lo] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number]
  return (hi + 0.05) / (lo + 0.05)
}

/** G. Machado, M. Oliveira, L. Fernandes 2009, severity 1.0; figures from memory. */
const SIGHT: Readonly<Record<string, readonly RGB[]>> = {
  'full colour': [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  'black and white': [
    [0.2126, 0.7152, 0.0722],
    [0.2126, 0.7152, 0.0722],
    [0.2126, 0.7152, 0.0722],
  ],
}
const seenBy = (sight: readonly RGB[], [r, g, b]: RGB): RGB =>
  sight.map((m) => Math.min(1, Math.max(0, m[0] * r + m[1] * g + m[2] * b))) as unknown as RGB

/** Zoom at which a van of 77 parts fills a laptop's sheet. */
const OVERVIEW = 0.5
const px = (mm: number): number => mm * PX * OVERVIEW
const dashPx = (look: Look): readonly number[] => (look.dash ?? []).map((mm) => px(mm) * coarseness(OVERVIEW))

/** What a line is without any colour. */
const patternOf = (look: Look): string =>
  look.coreMm > 0 ? 'hollow' : look.dash === null ? 'solid' : look.dash.length > 2 ? 'dash-dot' : 'dashed'

function canBeTold(a: Look, b: Look): boolean {
  if (patternOf(a) !== patternOf(b)) return true
  const [thin, thick] = [a.widthMm, b.widthMm].sort((x, y) => x - y) as [number, number]
  if (thick / thin >= 1.35 && px(thick) - px(thin) >= 0.65) return true
  const [p, q] = [dashPx(a), dashPx(b)]
  return p.length > 0 && (p[0]! / q[0]! >= 3 || q[0]! / p[0]! >= 3)
}

describe.each(LENS_KEYS)('lens %s', (lens) => {
  const { looks } = LENSES[lens]

  test('each line can be told from each other by width and pattern alone, at an overview', () => {
    const alike = looks.flatMap((a, i) =>
      looks.slice(i + 1).flatMap((b) => (canBeTold(a, b) ? [] : [`${a.words} / ${b.words}`])),
    )
    expect(alike).toEqual([])
  })

  test('patterns are no finer than the eye tells, and hollow lines are open', () => {
    for (const look of looks) {
      for (const part of dashPx(look)) expect(part).toBeGreaterThanOrEqual(1)
      if (look.coreMm > 0) {
        expect(px(look.coreMm)).toBeGreaterThanOrEqual(2)
        expect(px(look.widthMm - look.coreMm)).toBeGreaterThanOrEqual(2)
      }
    }
  })
})

describe.each(Object.entries(SIGHT))('inks of lines on the sheet, %s', (_, sight) => {
  test.each([
    ['light', light],
    ['dark', dark],
  ])('stand out on %s paper (WCAG 2.2, 1.4.11: 3 to 1)', (_theme, theme) => {
    for (const name of ['ink', 'danger', 'accent'])
      expect(contrast(seenBy(sight, ink(theme, name)), seenBy(sight, ink(theme, 'sheet')))).toBeGreaterThan(3)
  })
})
