import { type ConductorId, conductorById, type Edit, type Place } from '../../engine'
import { useOpen } from './open'
import { useView } from './view'

/**
 * The edit that lays a conductor through corners in the view that one looks at. Another view than the single-line one
 * gets a way of its own where it has one already, or where an end of the conductor stands elsewhere in it.
 */
export function pathEdit(id: ConductorId, path: readonly Place[]): Edit {
  const { design } = useOpen.getState()
  const { view } = useView.getState()
  const c = conductorById(design, id)
  if (!c || view === 'single-line') return { do: 'conductor', conductors: [id], set: { path } }
  const standsElsewhere = design.parts.some(
    (p) => (p.id === c.from.part || p.id === c.to.part) && p.at?.[view],
  )
  const own = c.pathIn?.[view] !== undefined || standsElsewhere
  const set = own ? { pathIn: { ...c.pathIn, [view]: path } } : { path }
  return { do: 'conductor', conductors: [id], set }
}
