import { memo, useMemo } from 'react'
import { type LoadFigure, loadFigures } from '../lenses/drop'
import { seenThrough } from '../lenses/lens'
import { useGuarded } from '../lenses/painted'
import { placesAround, placesBeside, placesOn, type Wanted } from '../lenses/tags'
import { useLatest } from '../store/latest'
import { useView } from '../store/view'
import { useLettering } from './lettering'
import { TagLayer } from './TagLayer'
import { measureAt, takenBy } from './tagging'

/** The figures of the lens: on the lines where there is room, and at the loads. */
export const LensFigures = memo(function LensFigures() {
  const lens = useView((s) => s.lens)
  const answers = useLatest((s) => s.answers)
  const scene = useLatest((s) => s.scene)
  const guarded = useGuarded()
  const zoom = useLettering()
  const wanted = useMemo((): readonly Wanted[] => {
    if (!lens || !answers || !scene) return []
    const measure = measureAt(zoom)
    const onLines = scene.conductors.flatMap(({ id, withReturn, points }): Wanted[] => {
      const ids = withReturn === null ? [id] : [id, withReturn]
      const { figure, rank, look } = seenThrough(lens, answers, ids, guarded)
      if (figure === null) return []
      const size = measure(figure)
      // Trouble is told in words also where no stretch is long enough for them.
      const beside = look.ink === 'danger' ? placesBeside(points, size) : []
      return [{ key: id, text: figure, rank, places: [...placesOn(points, size[0]), ...beside] }]
    })
    if (lens !== 'drop') return onLines
    const loads = loadFigures(answers.drops)
    const atLoads = scene.parts.flatMap((part): Wanted[] => {
      const at = loads.get(part.id)
      return at ? [atLoad(part.id, at, placesAround(part, measure(at.text)))] : []
    })
    return [...onLines, ...atLoads]
  }, [lens, answers, scene, guarded, zoom])
  const taken = useMemo(() => takenBy(scene, zoom), [scene, zoom])
  return <TagLayer wanted={wanted} taken={taken} zoom={zoom} />
})

/** Loads go before lines, and those over their limit first. */
const atLoad = (part: string, { text, over, percent }: LoadFigure, places: Wanted['places']): Wanted => ({
  key: part,
  text,
  rank: 1e3 + percent + (over ? 1e3 : 0),
  places,
  boxed: over ? 'strong' : 'thin',
})
