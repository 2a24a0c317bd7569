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
import './theme/glance.css'
import './theme/sizing.css'
import './theme/stages.css'
import './theme/round.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './App'
import { Broken } from './Broken'
import { startAutosave } from './files/autosave'
import { startPoints } from './files/keeppoints'
import { startLeaving } from './files/leaving'
import { keepForOffline } from './files/offline'
import { openAtStart } from './files/session'
import { startThumbnails } from './files/thumbnails'
import { watchAddress } from './stages/address'
import { watchKeys } from './store/keys'
import { watchPointer } from './store/say'
import { startTheme } from './theme/theme'
import { startEngine } from './worker/start'

startTheme()
watchPointer()
watchKeys()
watchAddress()
startAutosave()
startThumbnails()
startPoints()
startLeaving()
keepForOffline()

startEngine()

void openAtStart()

createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <Broken>
      <App />
    </Broken>
  </StrictMode>,
)
