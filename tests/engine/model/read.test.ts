import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { networkOf } from '../../../engine/calc/network'
import { apply } from '../../../engine/edit/apply'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Design } from '../../../engine/model/design'
import { STEPS, upgrade } from '../../../engine/model/upgrade'
import { writeDesign } from '../../../engine/model/write'
import { analyse } from '../../../engine/rules/analyse'

const FILES = new URL('../../files/', import.meta.url).pathname
const kept = (name: string): string => readFileSync(`${FILES}${name}`, 'utf8')
const sample = kept('format-1.json')

// biome-ignore lint/suspicious/noExplicitAny: a file that is spoilt on purpose has no type
type Raw = Record<string, any>

/** The sample with something done to it. */
function spoilt(change: (file: Raw) => void): string {
  const file = JSON.parse(sample) as Raw
  change(file)
  return JSON.stringify(file)
}

function opened(text: string): { design: Design; places: string[] } {
  const { design, problems } = readDesign(text)
  if (!design) throw new Error(JSON.stringify(problems))
  return { design, places: problems.map((p) => p.path) }
}

/** Places of the problems of a file that must not open. */
function stopped(text: string): string[] {
  const { design, problems } = readDesign(text)
  expect(design).toBeUndefined()
  expect(problems.length).toBeGreaterThan(0)
  for (const p of problems) for (const words of [p.expected, p.found]) expect(words).toMatch(/\S/)
  return problems.map((p) => p.path)
}

describe('kept files', () => {
  // One kept sample for each format number that was ever written.
  test('there is a sample of every format, and each opens without a problem', () => {
    const names = readdirSync(FILES).filter((name) => /^format-\d+\.json$/.test(name))
    expect(names.length).toBe(STEPS.length + 1)
    for (const name of names) expect(readDesign(kept(name)).problems).toEqual([])
  })

  test('today’s sample is written back byte for byte, strange kinds and keys included', () => {
    const { design } = opened(sample)
    expect(writeDesign(design)).toBe(sample)
    expect(design.parts.at(-1)).toMatchObject({
      kind: 'from-a-later-version',
      values: { speed: [1, 2, { deep: true }] },
    })
  })

  test('strange keys outlive edits', () => {
    const { design } = opened(sample)
    const result = apply(design, { do: 'move', to: [{ part: 'p9', x: 0, y: 0 }] })
    const again = JSON.parse(writeDesign((result as { design: Design }).design)) as Raw
    expect(again.workshop).toEqual({ ticked: ['c1'] })
    expect(again.settings.paperSize).toBe('A3')
    expect(again.conductors.at(-1).heatShrink).toBe('blue')
  })

  test.each(readdirSync(`${FILES}broken`))('broken/%s gives problems, not an error', (name) => {
    const { problems } = readDesign(kept(`broken/${name}`))
    expect(problems.length).toBeGreaterThan(0)
  })
})

describe('a file that does not open says why', () => {
  test.each([
    ['', ''],
    ['   ', ''],
    ['null', ''],
    ['[]', ''],
    ['"text"', ''],
    ['42', ''],
    ['{}', 'loomwright'],
    ['{"loomwright": "1"}', 'loomwright'],
    ['{"loomwright": 0}', 'loomwright'],
    ['{"loomwright": 1.5}', 'loomwright'],
    ['{"loomwright": 999}', 'loomwright'],
    ['{"type":"FeatureCollection","features":[]}', 'loomwright'],
  ])('%s', (text, place) => {
    expect(stopped(text)).toEqual([place])
  })

  test.each([
    ['{\n  "a": 1,\n  "b" 2\n}', 'line 3, column 7'],
    ['{\n  "a": [1, 2,]\n}', 'line 2, column 14'],
    ['{"a": NaN}', 'line 1, column 7'],
    ["{'a': 1}", 'line 1, column 2'],
    ['{"a": 01}', 'line 1, column 8'],
    ['{"a": 1} x', 'line 1, column 10'],
    ['{"a": "x', 'line 1, column 7'],
    ['{"a": {"b": 1}', 'line 1, column 15'],
    ['{"a": 1,}', 'line 1, column 9'],
    ['}', 'line 1, column 1'],
  ])('%j is not JSON from %s on', (text, place) => {
    expect(stopped(text)).toEqual([place])
  })

  test('the place of a fault is where a text cut off there could still go on', () => {
    for (let cut = 1; cut < sample.length - 2; cut += 7) {
      const [place] = stopped(sample.slice(0, cut))
      const [line, column] = place!.match(/\d+/g)!.map(Number)
      const lines = sample.slice(0, cut).split('\n')
      expect(line).toBe(lines.length)
      expect(column).toBeLessThanOrEqual(lines.at(-1)!.length + 1)
    }
  })

  test('a later version is told from a foreign file', () => {
    expect(readDesign('{"loomwright": 999}').problems[0]!.found).toContain('later version')
  })

  test('header faults stop: id, voltage, rule set, lists', () => {
    expect(stopped(spoilt((f) => delete f.id))).toEqual(['id'])
    expect(stopped(spoilt((f) => (f.settings.systemV = 36)))).toEqual(['settings.systemV'])
    expect(stopped(spoilt((f) => delete f.settings.ruleSet))).toEqual(['settings.ruleSet'])
    expect(stopped(spoilt((f) => (f.settings = null)))).toEqual(['settings'])
    expect(stopped(spoilt((f) => (f.parts = {})))).toEqual(['parts'])
    expect(stopped(spoilt((f) => delete f.conductors))).toEqual(['conductors'])
  })
})

describe('what can be read opens', () => {
  const count = (text: string): [number, number, string[]] => {
    const { design, places } = opened(text)
    return [design.parts.length, design.conductors.length, places]
  }

  test('other settings are mended', () => {
    const { design, places } = opened(spoilt((f) => Object.assign(f.settings, { ambientC: 'warm', name: 7 })))
    expect(places).toEqual(['settings.name', 'settings.ambientC'])
    expect(design.settings).toMatchObject({ ambientC: 30, name: '', systemV: 12 })
  })

  test('a damaged conductor is left out, and its return stands by itself', () => {
    const [parts, conductors, places] = count(spoilt((f) => (f.conductors[2].lengthM = -1)))
    expect([parts, conductors]).toEqual([6, 5])
    expect(places).toEqual(['conductors[2].lengthM', 'conductors[3].returnOf'])
  })

  test.each([
    ['size', 7],
    ['bunched', 0],
    ['bunched', 1.5],
    ['sheathed', 'yes'],
    ['number', ''],
    ['from', null],
    ['to', { part: 'p1' }],
    ['designCurrent', { amps: 5 }],
    ['designCurrent', { amps: 5, reason: '' }],
    ['insulationC', 5],
  ])('%s: %j takes a conductor out', (key, value) => {
    const [, conductors, places] = count(spoilt((f) => (f.conductors[4][key] = value)))
    expect(conductors).toBe(5)
    expect(places[0]).toMatch(new RegExp(`^conductors\\[4\\]\\.${key}`))
  })

  test('a colour or a corner that cannot be read costs itself alone', () => {
    const { design, places } = opened(
      spoilt((f) => Object.assign(f.conductors[3], { colour: 'red', path: [{ x: 1e9, y: 0 }], remark: 5 })),
    )
    expect(places.sort()).toEqual(['conductors[3].colour', 'conductors[3].path[0].x', 'conductors[3].remark'])
    expect(design.conductors[3]).toMatchObject({ colour: 'BK', path: [], remark: '' })
  })

  test('a dangling end takes the conductor out; a terminal of an unknown kind does not', () => {
    expect(count(spoilt((f) => (f.conductors[0].to.part = 'p77')))[2]).toContain('conductors[0].to.part')
    expect(count(spoilt((f) => (f.conductors[0].to.terminal = '9')))[2]).toContain(
      'conductors[0].to.terminal',
    )
    expect(count(spoilt((f) => (f.conductors[0].to.terminal = '__proto__')))[2]).toContain(
      'conductors[0].to.terminal',
    )
    expect(count(spoilt((f) => (f.conductors[5].from.terminal = 'anything')))[2]).toEqual([])
  })

  test('a part that is none takes its conductors along', () => {
    const [parts, conductors, places] = count(spoilt((f) => delete f.parts[1].kind))
    expect([parts, conductors]).toEqual([5, 4])
    expect(places).toEqual(['parts[1].kind', 'conductors[0].to.part', 'conductors[1].from.part'])
  })

  test('an id with a slash could pass for a terminal or a branch of another part: refused', () => {
    const slashed = (file: Raw): void => {
      const stranger = file.parts.at(-1)
      file.parts.push({ ...stranger, id: `${stranger.id}/a`, designation: 'U77' })
      file.conductors[5].from = { part: stranger.id, terminal: 'a/b' }
      file.conductors.push({ ...file.conductors[5], id: 'c77', number: 'W77', returnOf: null })
      file.conductors.at(-1).from = { part: `${stranger.id}/a`, terminal: 'b' }
    }
    const [parts, conductors, places] = count(spoilt(slashed))
    expect([parts, conductors]).toEqual([6, 6])
    expect(places).toEqual(['parts[6].id', 'conductors[6].from.part'])

    const branch = networkOf(opened(sample).design, 'any', new Set()).branches.keys().next().value!
    const { design, places: refused } = opened(spoilt((f) => (f.conductors[4].id = branch)))
    expect(branch).toContain('/')
    expect(refused[0]).toBe('conductors[4].id')
    expect(() => analyse(design)).not.toThrow()
    expect(() => analyse(opened(spoilt(slashed)).design)).not.toThrow()
  })

  test('other faults of a part are mended: place, turn, values', () => {
    const { design, places } = opened(
      spoilt((f) => {
        Object.assign(f.parts[1], { x: 1e300, turn: 45, mirrored: null, name: ['x'] })
        Object.assign(f.parts[1].values, { ratingA: 'eighty' })
        f.parts[2].values.ways[1].ratingA = -3
      }),
    )
    expect(places.sort()).toEqual([
      'parts[1].mirrored',
      'parts[1].name',
      'parts[1].turn',
      'parts[1].values.ratingA',
      'parts[1].x',
      'parts[2].values.ways[1].ratingA',
    ])
    expect(design.parts[1]).toMatchObject({ x: 0, turn: 0, mirrored: false, name: '' })
    expect(design.parts[1]!.values.ratingA).toBeUndefined()
  })

  test.each([[{}], ['six'], [[1, 2]], [[null]], [[]], [Array(500).fill({})]])(
    'ways that are %j are left out',
    (ways) => {
      const { design, places } = opened(spoilt((f) => (f.parts[2].values.ways = ways)))
      expect(places[0]).toMatch(/^parts\[2\]\.values\.ways/)
      expect(design.parts[2]!.values.ways).toBeUndefined()
    },
  )

  test('of two with one id the first stays; names given twice are renewed', () => {
    const [parts, , places] = count(spoilt((f) => f.parts.push({ ...f.parts[0], designation: 'G7' })))
    expect([parts, places]).toEqual([6, ['parts[6].id']])
    const { design } = opened(
      spoilt((f) => {
        f.parts.push({ ...f.parts[0], id: 'p20' }, { ...f.parts[0], id: 'p21' })
        f.conductors.push({ ...f.conductors[0], id: 'c20' }, f.conductors[1])
      }),
    )
    expect(design.parts.map((p) => p.designation)).toEqual(['G1', 'F1', 'F2', 'E1', 'W1', 'A1', 'G2', 'G3'])
    expect(new Set(design.conductors.map((c) => c.number)).size).toBe(7)
  })

  test('a hand-written file may leave out what has a usual value', () => {
    const text = JSON.stringify({
      loomwright: 1,
      id: 'by-hand',
      settings: { systemV: 24, ruleSet: 'us-33cfr183' },
      parts: [
        { id: 'a', kind: 'battery', designation: 'G1' },
        { id: 'b', kind: 'fuse-blade', designation: 'F1' },
      ],
      conductors: [
        { id: 'w', number: 'W1', from: { part: 'a', terminal: '+' }, to: { part: 'b', terminal: '1' } },
      ],
    })
    const { design, places } = opened(text)
    expect(places).toEqual([])
    expect(design.conductors[0]).toMatchObject({
      size: null,
      lengthM: null,
      bunched: 1,
      returnOf: null,
      path: [],
    })
    expect(opened(writeDesign(design)).design).toEqual(design)
  })
})

describe('hostile files', () => {
  test('keys that reach for a prototype are taken out and told', () => {
    const text = sample.replace(
      '"values": {',
      '"values": {"__proto__": {"polluted": 1}, "constructor": {"prototype": {"polluted": 1}},',
    )
    const { design, places } = opened(text)
    expect(places).toEqual(['parts[0].values.__proto__', 'parts[0].values.constructor'])
    expect(({} as Raw).polluted).toBeUndefined()
    expect((design.parts[0]!.values as Raw).polluted).toBeUndefined()
    expect(writeDesign(design)).not.toContain('polluted')
  })

  test('ids such as __proto__, constructor and 10 are ids like others', () => {
    for (const id of ['__proto__', 'constructor', '10', 'toString']) {
      const text = sample.replaceAll('"p1"', JSON.stringify(id))
      expect(readDesign(text).problems).toEqual([])
      expect(opened(text).design.conductors[0]!.from.part).toBe(id)
    }
  })

  test('a kind or a field named as a method of every object is unknown', () => {
    const { design, places } = opened(spoilt((f) => (f.parts[3].kind = 'toString')))
    expect(places).toEqual([])
    expect(design.parts[3]!.kind).toBe('toString')
  })

  test('numbers beyond all bounds are told and never kept', () => {
    const text = sample
      .replace('"lengthM": 0.15', '"lengthM": 1e999')
      .replace('"speed": [', '"speed": [-1e999,')
    const { design, places } = opened(text)
    expect(places).toContain('conductors[0].lengthM')
    expect(places).toContain('parts[5].values.speed[0]')
    expect(JSON.parse(writeDesign(design)).parts[5].values.speed[0]).toBeNull()
    expect(stopped(sample.replace('0.15', 'NaN'))[0]).toMatch(/^line \d+, column 18$/)
  })

  test('nesting without end is refused before it is parsed', () => {
    const deep = '['.repeat(100_000)
    expect(readDesign(deep).problems[0]!.expected).toContain('nested')
    expect(
      readDesign(`{"loomwright":1,"x":${'{"a":'.repeat(5000)}1${'}'.repeat(5000)}}`).problems[0]!.expected,
    ).toContain('nested')
    expect(
      readDesign(sample.replace('"under the floor"', JSON.stringify('['.repeat(1000)))).problems,
    ).toEqual([])
  })

  test('ten million characters of junk give a short list', () => {
    const junk = [
      'x'.repeat(1e7),
      '"'.repeat(1e7),
      `"${'\\"'.repeat(5e6)}`,
      ' '.repeat(1e7),
      '{"a":1},'.repeat(1.25e6),
    ]
    for (const text of junk) expect(readDesign(text).problems.length).toBe(1)
    const parts = Array.from({ length: 100_000 }, (_, i) => ({ id: i, kind: 'battery', x: 'left' }))
    const { design, problems } = readDesign(spoilt((f) => (f.parts = parts)))
    expect(design!.parts).toEqual([])
    expect(problems.length).toBe(201)
    expect(problems.at(-1)!.found).toMatch(/^\d+ more problems$/)
  })

  test('one name for very many parts is renewed in linear time', () => {
    const parts = Array.from({ length: 50_000 }, (_, i) => ({ id: `q${i}`, kind: 'load', designation: 'E1' }))
    const { design } = opened(spoilt((f) => Object.assign(f, { parts, conductors: [] })))
    expect(new Set(design.parts.map((p) => p.designation)).size).toBe(50_000)
  })
})

describe('upgrades', () => {
  test('go step by step', () => {
    const steps = [(f: Raw) => ({ ...f, trail: 'a' }), (f: Raw) => ({ ...f, trail: `${f.trail}b` })]
    expect(upgrade({ loomwright: 1 }, 1, steps, 3)).toEqual({ loomwright: 3, trail: 'ab' })
    expect(upgrade({ loomwright: 2, trail: 'x' }, 2, steps, 3)).toEqual({ loomwright: 3, trail: 'xb' })
    expect(upgrade({ loomwright: 3 }, 3, steps, 3)).toEqual({ loomwright: 3 })
    expect(() => upgrade({}, 3, steps, 4)).toThrow()
  })
})
