import { create } from 'zustand'

/** Is the newest edit in the browser's database? */
export const useSaved = create<{ readonly state: 'kept' | 'keeping' | 'failed' }>(() => ({ state: 'kept' }))
