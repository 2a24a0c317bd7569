import { type DBSchema, openDB } from 'idb'

/** One design as kept in the browser's database: its file text, and what the list of designs shows. */
export interface Kept {
  readonly id: string
  readonly name: string
  readonly revision: string
  readonly parts: number
  readonly conductors: number
  /** ISO 8601, UTC. */
  readonly savedAt: string
  readonly text: string
  readonly thumbnail: Blob | null
}

export type KeptRow = Omit<Kept, 'text'>

interface Schema extends DBSchema {
  designs: { key: string; value: Kept }
  /** "last": id of the design that was open last. */
  marks: { key: string; value: string }
}

const database = () =>
  openDB<Schema>('loomwright', 1, {
    upgrade(db) {
      db.createObjectStore('designs', { keyPath: 'id' })
      db.createObjectStore('marks')
    },
  })

let opened: ReturnType<typeof database> | null = null
const db = () => (opened ??= database())

/** Writes a design and marks it as the last one open, in one transaction. The thumbnail of before is kept. */
export async function keep(design: Omit<Kept, 'thumbnail'>): Promise<void> {
  const tx = (await db()).transaction(['designs', 'marks'], 'readwrite', { durability: 'strict' })
  const before = await tx.objectStore('designs').get(design.id)
  tx.objectStore('designs').put({ ...design, thumbnail: before?.thumbnail ?? null })
  tx.objectStore('marks').put(design.id, 'last')
  await tx.done
}

export async function keepThumbnail(id: string, thumbnail: Blob): Promise<void> {
  const tx = (await db()).transaction('designs', 'readwrite')
  const kept = await tx.store.get(id)
  if (kept) tx.store.put({ ...kept, thumbnail })
  await tx.done
}

export const fetchKept = async (id: string): Promise<Kept | undefined> => (await db()).get('designs', id)

export const lastOpen = async (): Promise<string | undefined> => (await db()).get('marks', 'last')

/** All designs, the newest first. */
export async function listKept(): Promise<readonly KeptRow[]> {
  const all = await (await db()).getAll('designs')
  return all.sort((a, b) => b.savedAt.localeCompare(a.savedAt))
}

export const discard = async (id: string): Promise<void> => (await db()).delete('designs', id)
