import { Camera, Trash2 } from 'lucide-react'
import { useRef, useState } from 'react'
import { type Conductor, recordOf } from '../../../engine'
import { useOpen } from '../../store/open'
import { refuse, say } from '../../store/say'
import { kilobytes, photoUrl, smallJpeg } from './photo'
import { addPhoto, removePhoto } from './record'

/** Photos of a conductor, made small, kept in the design file; what they add to it is said. */
export function Photos({ conductor }: { conductor: Conductor }) {
  const design = useOpen((s) => s.design)
  const disabled = useOpen((s) => s.hold !== 'writing')
  const [busy, setBusy] = useState(false)
  const chooser = useRef<HTMLInputElement>(null)
  const photos = (recordOf(design, conductor.id)?.photos ?? []).filter((p) => p.jpeg !== null)
  const all = (design.bench?.conductors ?? []).flatMap((r) => r.photos ?? []).map((p) => p.jpeg?.length ?? 0)
  const total = all.reduce((sum, n) => sum + n, 0)

  const take = async (file: File | undefined) => {
    if (!file) return
    setBusy(true)
    try {
      const jpeg = await smallJpeg(file)
      if (addPhoto(conductor, jpeg))
        say(
          `Photo kept: it adds ${kilobytes(jpeg.length)} to the design file, all photos ${kilobytes(total + jpeg.length)}.`,
        )
    } catch (error) {
      refuse(
        error instanceof Error ? `No photo: ${error.message}` : 'This file is no picture that can be read.',
      )
    } finally {
      setBusy(false)
    }
  }
  return (
    <>
      <button
        type="button"
        className="plain"
        disabled={disabled || busy}
        onClick={() => chooser.current?.click()}
      >
        <Camera size={22} aria-hidden /> {busy ? 'Making it small…' : 'Photo'}
      </button>
      <input
        ref={chooser}
        type="file"
        accept="image/*"
        capture="environment"
        hidden
        aria-label={`Photo of ${conductor.number}`}
        onChange={(e) => {
          void take(e.target.files?.[0])
          e.target.value = ''
        }}
      />
      {photos.length > 0 && (
        <ul className="photos">
          {photos.map(({ photo, jpeg }, i) => (
            <li key={photo}>
              <img src={photoUrl(jpeg!)} alt={`${conductor.number}, ${i + 1} of ${photos.length}`} />
              <button
                type="button"
                className="plain"
                aria-label={`Take out photo ${i + 1}`}
                disabled={disabled}
                onClick={() => removePhoto(conductor, photo)}
              >
                <Trash2 size={20} aria-hidden />
              </button>
              <small>{kilobytes(jpeg!.length)}</small>
            </li>
          ))}
          <li className="quiet">All photos add {kilobytes(total)} to the design file.</li>
        </ul>
      )}
    </>
  )
}
