import { useOpen } from '../store/open'
import { useView } from '../store/view'

/** After drawing a frame around parts: the conductors among them are selected too. */
export function selectAmong(): void {
  const { parts } = useView.getState()
  const among = useOpen
    .getState()
    .design.conductors.filter((c) => parts.has(c.from.part) && parts.has(c.to.part))
  if (among.length) useView.setState({ conductors: new Set(among.map((c) => c.id)) })
}
