import { type Design, newDesign, type Problem, readDesign, writeDesign } from '../../engine'
import { lay, type OpenState, useOpen } from '../store/open'
import { say } from '../store/say'
import { clearSelection, lookAtAll, setOverlay } from '../store/view'
import { type Demo, fetchDemo, listDemos } from './demos'
import { pickFile, saveFile } from './disk'
import { keepBefore } from './keepbefore'
import { fetchKept, lastOpen } from './kept'
import { hearLastWords } from './lastwords'
import { takeDesign, whenFree } from './lock'
import { readBytes } from './readbytes'

/** Puts a design on the table; where another tab holds it, this one only looks. */
async function show(design: Design, own: boolean, file: OpenState['file'] = null): Promise<void> {
  const mine = await takeDesign(design.id)
  lay(design, mine ? 'writing' : 'reading', own, file)
  clearSelection()
  lookAtAll()
  if (!mine) onlyLook(design.id)
}

function onlyLook(id: string): void {
  useOpen.setState({ hold: 'reading' })
  say('Another tab has this design open. This one only looks.')
  whenFree(id, () => {
    useOpen.setState({ hold: 'free' })
    say('The other tab has let go of this design. You can change it here.')
  })
}

/** Takes over a design that the other tab has let go of, as that tab has left it. */
export async function takeOver(): Promise<void> {
  const { design } = useOpen.getState()
  if (!(await takeDesign(design.id))) {
    onlyLook(design.id)
    return
  }
  const kept = await fetchKept(design.id).catch(() => undefined)
  const newest = kept && readDesign(kept.text).design
  lay(newest ?? design, 'writing', true)
  say('This tab now changes the design.')
}

const today = () => new Date().toISOString().slice(0, 10)

/** The last open design, else the first demo, else an empty sheet. */
export async function openAtStart(): Promise<void> {
  await hearLastWords().catch(() => {})
  const last = await lastOpen().catch(() => undefined)
  if (last && (await openKept(last))) return
  const [demo] = await listDemos()
  if (!demo || !(await openDemo(demo))) await openBlank()
}

export async function openKept(id: string): Promise<boolean> {
  const kept = await fetchKept(id)
  const read = kept && readDesign(kept.text)
  if (!read?.design) return kept ? listProblems(kept.name, read?.problems ?? []) : false
  await show(read.design, true)
  return true
}

export const openBlank = (): Promise<void> =>
  show(newDesign(crypto.randomUUID(), { name: '', date: today() }), false)

/** A demo opens as a design of its own; the demo itself never changes. */
export async function openDemo(demo: Demo): Promise<boolean> {
  const read = readDesign(await fetchDemo(demo))
  if (!read.design) return listProblems(demo.file, read.problems)
  await show({ ...read.design, id: crypto.randomUUID() }, false)
  return true
}

/**
 * Opens a design file, or the design inside a PDF. One with problems gives their list, and nothing on the table changes
 * unless the person then asks for it.
 */
export async function openBytes(
  bytes: Uint8Array,
  name: string,
  handle: FileSystemFileHandle | null = null,
): Promise<boolean> {
  const { design, problems, from } = readBytes(bytes)
  if (!design) return listProblems(name, problems)
  if (problems.length) return listProblems(name, problems, () => void showFile(design, name))
  const told = from === 'PDF' && `The design inside ${name} is open. Saving writes a design file of its own.`
  await showFile(design, name, told ? null : { name, handle }, told || '')
  return true
}

/** A file may take the place of a design that is kept here: what was kept can then be gone back to. */
async function showFile(
  design: Design,
  name: string,
  file: OpenState['file'] = null,
  told = '',
): Promise<void> {
  const before = await keepBefore(design, name)
  await show(design, true, file)
  const where = before ? 'What this browser kept of this design stands under Designs, Earlier states.' : ''
  const words = `${told} ${where}`.trim()
  if (words) say(words)
}

function listProblems(file: string, problems: readonly Problem[], openAnyway?: () => void): false {
  setOverlay({ is: 'problems', file, problems, ...(openAnyway ? { openAnyway } : {}) })
  return false
}

export async function openFromDisk(): Promise<void> {
  const picked = await pickFile()
  if (picked) await openBytes(picked.bytes, picked.name, picked.handle)
}

export async function saveToDisk(): Promise<void> {
  const { design, file } = useOpen.getState()
  const saved = await saveFile(file?.name ?? fileName(design), writeDesign(design), file?.handle ?? null)
  if (!saved) return
  useOpen.setState({ file: saved })
  say(`Saved as ${saved.name}.`)
}

/** The same drawing under an id of its own, to be changed freely. */
export async function openCopy(): Promise<void> {
  const { design } = useOpen.getState()
  const name = `${design.settings.name || 'Untitled design'} (copy)`
  await show({ ...design, id: crypto.randomUUID(), settings: { ...design.settings, name } }, true)
}

export const fileName = (design: Design): string =>
  `${
    (design.settings.name || 'design')
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '') || 'design'
  }.json`
