import './theme/fonts.css'
import './theme/tokens.css'
import './theme/base.css'
import './theme/shell.css'
import './theme/panels.css'
import './theme/fields.css'
import './theme/findings.css'
import './theme/marks.css'
import './theme/empty.css'
import './theme/over.css'
import './theme/cautions.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './App'
import { startAutosave } from './files/autosave'
import { openAtStart } from './files/session'
import { watchKeys } from './store/keys'
import { useOpen } from './store/open'
import { watchPointer } from './store/say'
import { useView } from './store/view'
import { startTheme } from './theme/theme'
import { startClient } from './worker/client'

startTheme()
watchPointer()
watchKeys()
startAutosave()

const client = startClient()
const ask = () => {
  const { design, hold } = useOpen.getState()
  if (hold !== 'loading') client.ask(design, useView.getState().view)
}
useOpen.subscribe((now, before) => now.design !== before.design && ask())
useView.subscribe((now, before) => now.view !== before.view && ask())

void openAtStart()

createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <App />
  </StrictMode>,
)
