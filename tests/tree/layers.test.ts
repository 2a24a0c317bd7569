import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { findCycle, type SourceFile, sourcesUnder } from './sources'

/** The structure of the tree, as DEVELOPERS.md states it. */

const ROOT = new URL('../..', import.meta.url).pathname
const engine = sourcesUnder('engine')
const app = sourcesUnder('app')

/** A file imports its own folder and what stands before it. */
const LAYERS = [
  'base',
  'math',
  'tables',
  'model',
  'kinds',
  'edit',
  'calc',
  'rules',
  'words',
  'sheets',
  'index',
]

function layerOf(path: string): string {
  const [, first, second] = path.split('/')
  if (second !== undefined) return first!
  return first!.replace(/\.ts$/, '') === 'index' ? 'index' : 'base'
}

const inEngine = (name: string): boolean => name.startsWith('engine/') || name === 'engine'

const importing = (
  files: readonly SourceFile[],
  wrong: (name: string, file: SourceFile) => boolean,
): string[] =>
  files.flatMap((file) =>
    file.imports.filter((name) => wrong(name, file)).map((name) => `${file.path} → ${name}`),
  )

describe('engine', () => {
  test('has the layers that are named, and no other folder', () => {
    expect(engine.length).toBeGreaterThan(40)
    expect(
      [...new Set(engine.map((f) => layerOf(f.path)))].filter((layer) => !LAYERS.includes(layer)),
    ).toEqual([])
  })

  test('imports its own folder and what stands to the left', () => {
    const rank = (path: string): number => LAYERS.indexOf(layerOf(path))
    expect(importing(engine, (name, file) => inEngine(name) && rank(name) > rank(file.path))).toEqual([])
  })

  test('imports no package, but zod and fflate in the files of the model', () => {
    const packages = importing(engine, (name) => !inEngine(name) && !name.startsWith('.'))
    expect(packages.filter((line) => !/^engine\/model\/\w+\.ts → (zod|fflate)$/.test(line))).toEqual([])
  })

  test('reaches nothing outside itself', () => {
    expect(importing(engine, (name) => /^(app|tests)\b/.test(name))).toEqual([])
  })

  test('is compiled without the browser and without Node', () => {
    const config = JSON.parse(readFileSync(`${ROOT}engine/tsconfig.json`, 'utf8'))
    expect(config.compilerOptions).toEqual({ lib: ['ES2023'], types: [] })
  })
})

describe('app', () => {
  test('enters the engine by its door', () => {
    expect(importing(app, (name) => inEngine(name) && name !== 'engine' && name !== 'engine/index')).toEqual(
      [],
    )
  })

  test.each([
    ['reactflow', 'app/canvas/'],
    ['jspdf', 'app/print/'],
    ['idb', 'app/files/'],
  ])('knows %s in %s only', (name, folder) => {
    const strays = importing(
      app,
      (n, file) => (n === name || n.startsWith(`${name}/`)) && !file.path.startsWith(folder),
    )
    expect(strays).toEqual([])
  })
})

describe('the tree', () => {
  test('has no ring of imports', () => {
    expect(findCycle(engine)).toBeNull()
    expect(findCycle(app)).toBeNull()
  })

  test('finds a ring where there is one', () => {
    const file = (path: string, ...imports: string[]): SourceFile => ({ path, text: '', imports })
    expect(findCycle([file('a.ts', 'b'), file('b.ts', 'c'), file('c.ts', 'b')])).toEqual([
      'b.ts',
      'c.ts',
      'b.ts',
    ])
  })

  test('writes out every public name', () => {
    const starred = [...engine, ...app].filter((f) => /^export \*/m.test(f.text)).map((f) => f.path)
    expect(starred).toEqual([])
  })

  test('has no file for things without a home, and nothing left to do', () => {
    const files = [...engine, ...app]
    const homeless = files.filter((f) => /(^|\/)(utils?|helpers?|common|misc)(\.|\/)/i.test(f.path))
    const undone = files.filter((f) => /\b(TODO|FIXME|XXX|HACK)\b/.test(f.text))
    expect([...homeless, ...undone].map((f) => f.path)).toEqual([])
  })

  test('keeps its top level', () => {
    const wanted = ['app', 'engine', 'tests', 'public', 'package.json', 'package-lock.json', 'vite.config.ts']
    const allowed = new Set([...wanted, 'tsconfig.json', 'README.md', 'DEVELOPERS.md'])
    const ignored = readFileSync(`${ROOT}.gitignore`, 'utf8')
      .split('\n')
      .map((line) => line.replaceAll('/', ''))
    const strays = readdirSync(ROOT).filter(
      (n) => !n.startsWith('.') && !allowed.has(n) && !ignored.includes(n),
    )
    expect(strays).toEqual([])
  })
})
