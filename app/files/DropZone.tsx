import { useEffect, useState } from 'react'
import { openBytes } from './session'

/** A file dropped anywhere on the page is opened, or its problems are listed. */
export function DropZone() {
  const [over, setOver] = useState(false)
  useEffect(() => {
    const carriesFile = (e: DragEvent) => e.dataTransfer?.types.includes('Files') ?? false
    const onOver = (e: DragEvent) => {
      if (!carriesFile(e)) return
      e.preventDefault()
      setOver(true)
    }
    const onLeave = (e: DragEvent) => {
      if (e.relatedTarget === null) setOver(false)
    }
    const onDrop = async (e: DragEvent) => {
      if (!carriesFile(e)) return
      e.preventDefault()
      setOver(false)
      const file = e.dataTransfer?.files[0]
      if (file) await openBytes(new Uint8Array(await file.arrayBuffer()), file.name)
    }
    window.addEventListener('dragover', onOver)
    window.addEventListener('dragleave', onLeave)
    window.addEventListener('drop', onDrop)
    return () => {
      window.removeEventListener('dragover', onOver)
      window.removeEventListener('dragleave', onLeave)
      window.removeEventListener('drop', onDrop)
    }
  }, [])
  return over ? <div className="drop">Let go to open the file</div> : null
}
