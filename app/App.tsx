import { Canvas } from './canvas/Canvas'
import { DropZone } from './files/DropZone'
import { Overlays } from './help/Overlays'
import { Said } from './help/Said'
import { Card } from './panels/Card'
import { Findings } from './panels/Findings'
import { Shelf } from './panels/Shelf'
import { StatusLine } from './panels/StatusLine'
import { TopStrip } from './panels/TopStrip'
import { useView } from './store/view'
import { TryPanel } from './tryit/TryPanel'

export function App() {
  const shelf = useView((s) => s.shelf && !s.trying)
  const trying = useView((s) => s.trying)
  return (
    <div className="app">
      <TopStrip />
      {shelf && <Shelf />}
      <Canvas />
      {trying ? (
        <TryPanel />
      ) : (
        <aside className="side">
          <Card />
          <Findings />
        </aside>
      )}
      <StatusLine />
      <Overlays />
      <Said />
      <DropZone />
    </div>
  )
}
