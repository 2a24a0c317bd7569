import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, normalize, relative } from 'node:path'

const ROOT = new URL('../..', import.meta.url).pathname

export interface SourceFile {
  /** From the top of the tree, with forward slashes: "engine/model/read.ts". */
  readonly path: string
  readonly text: string
  readonly imports: readonly string[]
}

/** Every TypeScript file below a folder of the tree. */
export function sourcesUnder(folder: string): SourceFile[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => {
      const path = relative(ROOT, join(ROOT, folder, name))
      const text = readFileSync(join(ROOT, path), 'utf8')
      return { path, text, imports: importsOf(path, text) }
    })
}

/** `import … from`, `export … from`, `import '…'` and `import('…')`. */
const IMPORT = /^(?:import|export)\b[^'";=]*?\bfrom '([^']+)'|^import '([^']+)'|\bimport\('([^']+)'/gm

/** Package names as they are; paths of the tree without extension: "engine/model/read". */
function importsOf(path: string, text: string): string[] {
  const names = [...text.matchAll(IMPORT)].map((m) => m[1] ?? m[2] ?? m[3]!)
  return [...new Set(names)].map((name) =>
    name.startsWith('.') ? normalize(join(dirname(path), name)) : name,
  )
}

/** The file that an import of the tree means, or undefined. */
export function resolve(files: ReadonlyMap<string, SourceFile>, target: string): SourceFile | undefined {
  return [target, `${target}.ts`, `${target}.tsx`, `${target}/index.ts`]
    .map((name) => files.get(name))
    .find((file) => file !== undefined)
}

/** Files that import one another in a ring, as paths; null where there is none. */
export function findCycle(list: readonly SourceFile[]): readonly string[] | null {
  const files = new Map(list.map((f) => [f.path, f]))
  const state = new Map<string, 'open' | 'done'>()
  const trail: string[] = []
  const visit = (file: SourceFile): readonly string[] | null => {
    state.set(file.path, 'open')
    trail.push(file.path)
    for (const name of file.imports) {
      const next = resolve(files, name)
      if (!next || state.get(next.path) === 'done') continue
      if (state.get(next.path) === 'open') return [...trail.slice(trail.indexOf(next.path)), next.path]
      const cycle = visit(next)
      if (cycle) return cycle
    }
    trail.pop()
    state.set(file.path, 'done')
    return null
  }
  for (const file of list) {
    const cycle = state.has(file.path) ? null : visit(file)
    if (cycle) return cycle
  }
  return null
}
