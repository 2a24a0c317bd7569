import { type Design, writeDesign } from '../../engine'
import { db, type Point } from './database'

/** Points kept for each design; the oldest fall away. */
const MOST = 20

/** Keeps a named state of a design. The same state as the newest point is not kept twice. */
export async function keepPoint(design: Design, name: string, at = new Date()): Promise<void> {
  const text = writeDesign(design)
  const tx = (await db()).transaction('points', 'readwrite')
  const keys = await tx.store.index('design').getAllKeys(design.id)
  const newest = keys.length > 0 ? await tx.store.get(keys.at(-1)!) : undefined
  if (newest?.text !== text) {
    await tx.store.add({
      design: design.id,
      name,
      parts: design.parts.length,
      conductors: design.conductors.length,
      at: at.toISOString(),
      text,
    })
    for (const key of keys.slice(0, Math.max(0, keys.length + 1 - MOST))) await tx.store.delete(key)
  }
  await tx.done
}

/** The points of a design, the newest first. */
export async function listPoints(design: string): Promise<readonly Point[]> {
  const found = await (await db()).getAllFromIndex('points', 'design', design)
  return (found as Point[]).sort((a, b) => b.key - a.key)
}
