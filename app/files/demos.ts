/** One demo design that comes with the product. */
export interface Demo {
  readonly file: string
  readonly title: string
  readonly about: string
}

/** The list of demos beside the page; empty where there is none. */
export async function listDemos(): Promise<readonly Demo[]> {
  try {
    const response = await fetch('./demos/index.json')
    const found: unknown = response.ok ? await response.json() : []
    return Array.isArray(found) ? found.filter(isDemo) : []
  } catch {
    return []
  }
}

export async function fetchDemo(demo: Demo): Promise<string> {
  const response = await fetch(`./demos/${encodeURIComponent(demo.file)}`)
  if (!response.ok) throw new Error(`The demo "${demo.title}" could not be read.`)
  return response.text()
}

const isDemo = (x: unknown): x is Demo =>
  typeof x === 'object' &&
  x !== null &&
  'file' in x &&
  typeof x.file === 'string' &&
  'title' in x &&
  typeof x.title === 'string' &&
  'about' in x &&
  typeof x.about === 'string'
