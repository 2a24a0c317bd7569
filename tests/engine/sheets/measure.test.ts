import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { ADVANCES } from '../../../engine/sheets/advances'
import { cutTo, printable, unprintable, widthOf, wrapTo } from '../../../engine/sheets/measure'
import { runsOf, typefaceOf } from '../../reference/typeface/make'

/** Outside reference: the typeface file itself, read by its published format (ISO/IEC 14496-22). */

test('the table is that of the typeface', () => {
  for (const weight of ['regular', 'bold'] as const) {
    const face = typefaceOf(weight)
    expect(ADVANCES[weight]).toBe(runsOf(face).join(' '))
    expect([ADVANCES.unitsPerEm, ADVANCES.capHeight]).toEqual([face.unitsPerEm, face.capHeight])
  }
})

test.each(['regular', 'bold'] as const)('widths of text, %s', (weight) => {
  const face = typefaceOf(weight)
  const text = 'W12 · 16 mm² RD · 2.4 m'
  const units = [...text].reduce((sum, c) => sum + face.advances.get(c.codePointAt(0)!)!, 0)
  expect(widthOf(text, 1.8, weight)).toBeCloseTo((units * 1.8) / face.capHeight, 9)
})

test('signs that the typeface lacks', () => {
  expect(printable('0.1 mΩ, Ångström, 水\n')).toBe('0.1 mohm, Ångström, ? ')
  expect(widthOf('Ω', 2)).toBeCloseTo(widthOf('ohm', 2), 9)
})

test('signs that the typeface lacks give way to those that mean the same', () => {
  // U+202F and U+2011 as French typing and word processors set them; U+339F and U+2103 as Asian keyboards do.
  expect(printable('12\u202fV, 35\u2009mm², wet\u2011cell, 5\u2010way')).toBe('12 V, 35 mm², wet-cell, 5-way')
  expect(printable('35 ㎟, 40℃, Ｗ１２, Ⅳ')).toBe('35 mm2, 40°C, W12, IV')
  expect(printable('a\u200bb\u200e\u2060\ufe0fc')).toBe('abc')
})

test('what stays without a sign on paper is found', () => {
  expect(unprintable('Pump 水泵, Ж, 12\u202fV, mΩ')).toBe('水泵Ж')
  expect(unprintable('Kühlschränke, žluťoučký kůň')).toBe('')
})

test('lines keep to the width and lose no word', () => {
  const text = `${readFileSync(new URL(import.meta.url), 'utf8')
    .replaceAll(/\s+/g, ' ')
    .slice(0, 600)} ${'x'.repeat(90)}`
  const lines = wrapTo(60, text, 1.8)
  for (const line of lines) expect(widthOf(line, 1.8)).toBeLessThanOrEqual(60)
  expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''))
  expect(lines.length).toBeGreaterThan(8)
})

test('cut text ends in an ellipsis and fits', () => {
  const cut = cutTo(20, 'Refrigerator under the bench', 1.8)
  expect(cut.endsWith('…')).toBe(true)
  expect(widthOf(cut, 1.8)).toBeLessThanOrEqual(20)
  expect(cutTo(80, 'Refrigerator', 1.8)).toBe('Refrigerator')
})

test('a figure keeps its unit on its line', () => {
  const text = 'It clears within 0.5 s of 60 A and holds at 16 mm² as well.'
  for (let width = 12; width < 60; width++)
    for (const line of wrapTo(width, text, 1.8)) {
      expect(line).not.toMatch(/\d$/)
      expect(line).not.toMatch(/^(s|A|mm²)/)
    }
})
