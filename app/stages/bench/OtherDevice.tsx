import { useState } from 'react'
import { apply, type Brought, bringFrom, broughtWords, conflictWords, deviceName } from '../../../engine'
import { pickFile } from '../../files/disk'
import { readBytes } from '../../files/readbytes'
import { Sheet } from '../../help/Sheet'
import { doEdit, useOpen } from '../../store/open'
import { say } from '../../store/say'
import { setOverlay } from '../../store/view'
import { deviceId } from './device'
import { nameDevice } from './record'

/** Joins what another device has recorded on the same design: its file is opened, what it brings is shown, then brought. */
export function OtherDevice({ onClose }: { onClose: () => void }) {
  const design = useOpen((s) => s.design)
  const [file, setFile] = useState<{ readonly name: string; readonly brought: Brought } | null>(null)
  const [trouble, setTrouble] = useState<string | null>(null)

  const open = async () => {
    const picked = await pickFile()
    if (!picked) return
    const read = readBytes(picked.bytes)
    if (!read.design || read.problems.length > 0) {
      onClose()
      setOverlay({ is: 'problems', file: picked.name, problems: read.problems })
      return
    }
    const brought = bringFrom(useOpen.getState().design, read.design)
    setTrouble('refused' in brought ? brought.why : null)
    setFile('refused' in brought ? null : { name: picked.name, brought })
  }
  const bring = () => {
    if (file && doEdit(`Bring in ${file.name}`, file.brought.edit)) say(`${file.name} is brought in.`)
    onClose()
  }
  return (
    <Sheet
      title="Merge a file"
      about="On the other device, save this design to a file. Open that file here: what was recorded there is joined with what is recorded here. Nothing is lost; of each step the latest record counts."
      narrow
      onClose={onClose}
    >
      <div className="bench-merge">
        <DeviceName />
        <button type="button" className={file ? 'plain' : 'main'} onClick={() => void open()}>
          Open the other device’s file
        </button>
        {trouble && <p className="bench-warning danger">{trouble}</p>}
        {file && <WhatItBrings name={file.name} brought={file.brought} />}
        {file && (
          <div className="buttons">
            {!file.brought.nothing && (
              <button type="button" className="main" disabled={design === null} onClick={bring}>
                Bring it in
              </button>
            )}
            <button type="button" className="plain" onClick={onClose}>
              {file.brought.nothing ? 'Close' : 'Leave it'}
            </button>
          </div>
        )}
      </div>
    </Sheet>
  )
}

function WhatItBrings({ name, brought }: { name: string; brought: Brought }) {
  const design = useOpen((s) => s.design)
  const after = apply(design, brought.edit)
  const named = after.refused ? design : after.design
  return (
    <section aria-label="What it brings">
      <h3>{name}</h3>
      <ul className="brings">
        {broughtWords(brought).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {brought.conflicts.length > 0 && (
        <>
          <h3>Both recorded different facts</h3>
          <ul className="brings">
            {brought.conflicts.map((c) => (
              <li key={`${c.conductor} ${c.what}`}>{conflictWords(named, c)}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}

/** What people call this device, so that records of two are told apart. */
function DeviceName() {
  const design = useOpen((s) => s.design)
  const disabled = useOpen((s) => s.hold !== 'writing')
  const id = deviceId()
  const known = design.bench?.devices?.some((d) => d.device === id) ? deviceName(design, id) : ''
  const [name, setName] = useState(known)
  return (
    <label className="device">
      <span>This device is called</span>
      <input
        value={name}
        maxLength={40}
        placeholder={`Bench tablet (now: device ${id})`}
        disabled={disabled}
        onChange={(e) => setName(e.target.value)}
        onBlur={() => {
          if (name.trim() !== '' && name.trim() !== known) nameDevice(name)
        }}
      />
    </label>
  )
}
