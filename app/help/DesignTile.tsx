import { useEffect, useState } from 'react'
import type { KeptRow } from '../files/database'

/** One kept design: its picture, title, and when it was last changed. */
export function DesignTile({ row, onOpen }: { row: KeptRow; onOpen: () => void }) {
  const [picture, setPicture] = useState<string | null>(null)
  useEffect(() => {
    if (!row.thumbnail) return
    const url = URL.createObjectURL(row.thumbnail)
    setPicture(url)
    return () => URL.revokeObjectURL(url)
  }, [row.thumbnail])
  return (
    <button type="button" className="open" onClick={onOpen}>
      {picture ? <img src={picture} alt="" /> : <span className="no-picture" />}
      <strong>{row.name || 'Untitled design'}</strong>
      <small>
        {row.parts} parts, {row.conductors} conductors · rev. {row.revision || '–'}
      </small>
      <small>{new Date(row.savedAt).toLocaleString()}</small>
    </button>
  )
}
