import { Canvas } from './canvas/Canvas'
import { DropZone } from './files/DropZone'
import { FirstCautions } from './help/FirstCautions'
import { Overlays } from './help/Overlays'
import { Round } from './help/round/Round'
import { Said } from './help/Said'
import { Card } from './panels/Card'
import { Findings } from './panels/Findings'
import { Shelf } from './panels/Shelf'
import { StatusLine } from './panels/StatusLine'
import { TopStrip } from './panels/TopStrip'
import { Rail } from './stages/Rail'
import { StagePage } from './stages/StagePage'
import { useView } from './store/view'
import { TryPanel } from './tryit/TryPanel'

export function App() {
  const drawing = useView((s) => s.stage === 'drawing')
  return (
    <div className={drawing ? 'app' : 'app elsewhere'}>
      <TopStrip />
      <Rail />
      <ShelfOfParts />
      <Canvas />
      <Beside />
      <StagePage />
      <FirstCautions />
      <Round />
      <StatusLine />
      <Overlays />
      <Said />
      <DropZone />
    </div>
  )
}

function ShelfOfParts() {
  const shown = useView((s) => s.shelf && !s.trying)
  return shown ? <Shelf /> : null
}

/** What stands beside the sheet: card and findings, or the switches of a design in use. */
function Beside() {
  const trying = useView((s) => s.trying)
  if (trying) return <TryPanel />
  return (
    <aside className="side">
      <Card />
      <Findings />
    </aside>
  )
}
