import { useState } from 'react'
import { LIBRARIES, type Library, licenceText } from './libraries'

/** Whose open-source work runs in the page, and under which licences. */
export function About() {
  return (
    <section className="about-page" aria-label="About">
      <h3>About</h3>
      <p>
        Loomwright draws and checks extra-low-voltage DC wiring. Everything runs in this browser; nothing is
        sent anywhere. It stands on open-source work, with thanks to its authors:
      </p>
      <ul>
        {LIBRARIES.map((library) => (
          <LibraryRow key={library.key} library={library} />
        ))}
      </ul>
    </section>
  )
}

function LibraryRow({ library: { key, name, does, licence } }: { library: Library }) {
  const [text, setText] = useState('')
  return (
    <li>
      <details
        onToggle={(e) => {
          if (e.currentTarget.open && !text) void licenceText(key).then(setText)
        }}
      >
        <summary>
          <b>{name}</b> <span>{does}</span> <small>{licence}</small>
        </summary>
        <pre>{text}</pre>
      </details>
    </li>
  )
}
