/** Real files: the browser's own file window where it has one, else a download and an ordinary chooser. */

export interface Picked {
  readonly name: string
  readonly bytes: Uint8Array
  readonly handle: FileSystemFileHandle | null
}

interface PickerWindow {
  showOpenFilePicker?(options: object): Promise<FileSystemFileHandle[]>
  showSaveFilePicker?(options: object): Promise<WritableHandle>
}

/** `createWritable` is missing from some type libraries. */
type WritableHandle = FileSystemFileHandle & {
  createWritable(): Promise<{ write(text: string): Promise<void>; close(): Promise<void> }>
}

const DESIGN = { description: 'Loomwright design', accept: { 'application/json': ['.json'] } }
const READABLE = {
  description: 'Loomwright design, or a PDF with one inside',
  accept: { ...DESIGN.accept, 'application/pdf': ['.pdf'] },
}
const bytesOf = async (file: File) => new Uint8Array(await file.arrayBuffer())
const pickers = (): PickerWindow => window as unknown as PickerWindow
const cancelled = (e: unknown) => e instanceof DOMException && e.name === 'AbortError'

/** null: the person changed their mind. */
export async function pickFile(): Promise<Picked | null> {
  const open = pickers().showOpenFilePicker
  if (!open) return chooseFile()
  try {
    const [handle] = await open({ types: [READABLE] })
    if (!handle) return null
    const file = await handle.getFile()
    return { name: file.name, bytes: await bytesOf(file), handle }
  } catch (e) {
    if (cancelled(e)) return null
    throw e
  }
}

function chooseFile(): Promise<Picked | null> {
  const input = document.createElement('input')
  input.type = 'file'
  input.accept = '.json,.pdf,application/json,application/pdf'
  return new Promise((resolve) => {
    input.onchange = async () => {
      const file = input.files?.[0]
      resolve(file ? { name: file.name, bytes: await bytesOf(file), handle: null } : null)
    }
    input.oncancel = () => resolve(null)
    input.click()
  })
}

/** Writes to the file that was opened or saved before, else asks for one. Returns where it went; null: cancelled. */
export async function saveFile(
  name: string,
  text: string,
  handle: FileSystemFileHandle | null,
): Promise<{ readonly name: string; readonly handle: FileSystemFileHandle | null } | null> {
  const save = pickers().showSaveFilePicker
  if (!save) {
    download(name, new Blob([text], { type: 'application/json' }))
    return { name, handle: null }
  }
  try {
    const target = (handle as WritableHandle | null) ?? (await save({ suggestedName: name, types: [DESIGN] }))
    const out = await target.createWritable()
    await out.write(text)
    await out.close()
    return { name: target.name, handle: target }
  } catch (e) {
    if (cancelled(e)) return null
    throw e
  }
}

export function download(name: string, blob: Blob): void {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(blob)
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000)
}
