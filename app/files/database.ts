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

/** A named earlier state of a design. */
export interface Point {
  /** Given out by the database: later points have greater numbers. */
  readonly key: number
  /** Id of the design. */
  readonly design: string
  readonly name: string
  readonly parts: number
  readonly conductors: number
  /** ISO 8601, UTC. */
  readonly at: string
  readonly text: string
}

interface Schema extends DBSchema {
  designs: { key: string; value: Kept }
  /** "last": id of the design that was open last. */
  marks: { key: string; value: string }
  points: { key: number; value: Omit<Point, 'key'> & { key?: number }; indexes: { design: string } }
}

const database = () =>
  openDB<Schema>('loomwright', 2, {
    upgrade(db, before) {
      if (before < 1) {
        db.createObjectStore('designs', { keyPath: 'id' })
        db.createObjectStore('marks')
      }
      db.createObjectStore('points', { keyPath: 'key', autoIncrement: true }).createIndex('design', 'design')
    },
    // A later version in another tab must not wait for this one.
    blocking(_mine, _wanted, event) {
      ;(event.target as IDBDatabase).close()
      opened = null
    },
  })

let opened: ReturnType<typeof database> | null = null
export const db = () => (opened ??= database())
