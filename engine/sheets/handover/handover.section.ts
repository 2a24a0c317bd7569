import type { PackSection } from '../packs/section'
import { handoverCover, handoverSheets } from './sheets'

/** What the customer keeps: a cover, and the chapters in plain words. */
export const handoverSections: readonly PackSection[] = [
  {
    key: 'handover-cover',
    title: 'Cover',
    readers: ['customer'],
    cover: true,
    sheets: ({ design }) => handoverCover(design),
  },
  {
    key: 'handover',
    title: 'Living with the system',
    readers: ['customer'],
    sheets: ({ design }) => handoverSheets(design),
  },
]
