import { boundsOf, sceneText, textsIn } from '../../engine'
import { seenDesign } from '../store/seen'
import { useView } from '../store/view'

/** After drawing a frame around parts: the conductors and the texts among them are selected too. */
export function selectAmong(): void {
  const { parts, view } = useView.getState()
  const design = seenDesign()
  const among = design.conductors.filter((c) => parts.has(c.from.part) && parts.has(c.to.part))
  const inside = design.parts.filter((p) => parts.has(p.id))
  const bounds = inside.length > 0 ? boundsOf(inside) : null
  const texts = textsIn(design, view).filter((text) => {
    const { x, y, w, h } = sceneText(text)
    return (
      bounds && x < bounds.x + bounds.w && x + w > bounds.x && y < bounds.y + bounds.h && y + h > bounds.y
    )
  })
  if (among.length) useView.setState({ conductors: new Set(among.map((c) => c.id)) })
  if (texts.length) useView.setState({ texts: new Set(texts.map((t) => t.id)) })
}
