import { execFileSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { sheetSvg } from '../../../app/print/sheetsvg'
import { analyse, schematicSheets } from '../../../engine'
import { design } from '../../build'

const sheets = () => {
  const d = design({ name: 'Bread & "butter" <van>' })
    .part('battery', 'G1', { capacityAh: 100 }, { name: 'A < B & "C"' })
    .part('load', 'E1', { currentA: 4 }, { x: 100 })
    .join('G1.+', 'E1.+')
    .join('E1.-', 'G1.-')
    .build()
  const { answers, findings } = analyse(d)
  return schematicSheets(d, answers, findings)
}

/** Outside reference: an XML reader of Python's standard library. */
const PYTHON = `
import sys, xml.etree.ElementTree as tree
root = tree.fromstring(sys.stdin.buffer.read())
print(root.get('width'), root.get('height'), root.get('viewBox'))
print(chr(31).join(''.join(t.itertext()) for t in root.iter('{http://www.w3.org/2000/svg}text')))
`

test('a sheet as SVG is sound XML in millimetres, with its text as text', () => {
  const [, drawing] = sheets()
  const [size, texts] = execFileSync('python3', ['-c', PYTHON], {
    input: sheetSvg(drawing!),
    encoding: 'utf8',
  })
    .trim()
    .split('\n')
  expect(size).toBe('420mm 297mm 0 0 420 297')
  const words = texts!.split('\u001f').join(' ')
  for (const word of ['G1', 'A < B & "C"', 'Bread & "butter" <van>', 'W1', 'W2'])
    expect(words).toContain(word)
})

test('black: no colour but greys', () => {
  const svg = sheetSvg(sheets()[0]!, 'black')
  const colours = new Set(svg.match(/#[0-9a-f]{6}/g))
  for (const c of colours)
    expect(
      new Set(
        c
          .slice(1)
          .match(/../g)!
          .map((v) => Number.parseInt(v, 16) >> 3),
      ).size,
    ).toBe(1)
  expect(colours.size).toBeGreaterThan(1)
})
