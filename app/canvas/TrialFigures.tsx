import { memo, useMemo } from 'react'
import { figure } from '../../engine'
import { placesAround, placesOn, type Wanted } from '../lenses/tags'
import { useLatest } from '../store/latest'
import { useView } from '../store/view'
import { controlsByPart, partWords } from '../tryit/atpart'
import { flowOf } from '../tryit/flow'
import { useTrial } from '../tryit/trial'
import { useLettering } from './lettering'
import { TagLayer } from './TagLayer'
import { measureAt, takenBy } from './tagging'

/** While a design is tried out: currents on the lines, and at the parts how they stand and what they take or give. */
export const TrialFigures = memo(function TrialFigures() {
  const trying = useView((s) => s.trying)
  const trial = useTrial((s) => s.trial)
  const scene = useLatest((s) => s.scene)
  const zoom = useLettering()
  const wanted = useMemo((): readonly Wanted[] => {
    if (!trying || !trial || !scene || !trial.point.ok) return []
    const { point, controls, design } = trial
    const measure = measureAt(zoom)
    const own = controlsByPart(controls)
    const boxes = new Map(scene.parts.map((p) => [p.id, p]))
    const atParts = design.parts.flatMap((part): Wanted[] => {
      const box = boxes.get(part.id)
      const words = box && partWords(part, own.get(part.id) ?? [], trial, point)
      if (!box || !words) return []
      const { text, off } = words
      const shunt = point.shunts.has(part.id)
      const rank = (off ? 2e6 : 1e6) + (shunt ? 1e7 : 0)
      const tag: Wanted = {
        key: part.id,
        text,
        rank,
        places: placesAround(box, measure(text)),
        boxed: off ? 'strong' : 'thin',
      }
      return [shunt ? { ...tag, covers: box } : tag]
    })
    const onLines = scene.conductors.flatMap(({ id, withReturn, points }): Wanted[] => {
      const { amps } = flowOf(point, id, withReturn)
      const text = figure(amps, 'A')
      return amps === 0 ? [] : [{ key: id, text, rank: amps, places: placesOn(points, measure(text)[0]) }]
    })
    return [...atParts, ...onLines]
  }, [trying, trial, scene, zoom])
  const taken = useMemo(() => takenBy(scene, zoom), [scene, zoom])
  return <TagLayer wanted={wanted} taken={taken} zoom={zoom} />
})
