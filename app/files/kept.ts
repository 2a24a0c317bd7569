import { db, type Kept, type KeptRow } from './database'

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

/** Throws a design away, and its restore points with it. */
export async function discard(id: string): Promise<void> {
  const tx = (await db()).transaction(['designs', 'points'], 'readwrite')
  tx.objectStore('designs').delete(id)
  const points = tx.objectStore('points')
  for (const key of await points.index('design').getAllKeys(id)) points.delete(key)
  await tx.done
}
