import '../../theme/builtbadge.css'
import { useMemo } from 'react'
import { differencesOf, type Level } from '../../../engine'
import { LevelMark } from '../../panels/LevelMark'
import { useBuilt } from '../../store/built'
import { useOpen } from '../../store/open'
import { setStage, useView } from '../../store/view'
import { showView } from './looking'

const GRAVEST: readonly Level[] = ['danger', 'warning', 'not-checked', 'note']

/** Says that the vehicle differs from the drawing, with the gravest of what the checks find as built. */
export function BuiltBadge() {
  const design = useOpen((s) => s.design)
  const worse = useBuilt((s) => s.built?.worse)
  const count = useMemo(() => differencesOf(design).length, [design])
  // The page of the bench says it itself.
  const elsewhere = useView((v) => v.stage !== 'bench')
  if (count === 0 || !elsewhere) return null
  const level = GRAVEST.find((l) => worse?.some((f) => f.level === l)) ?? 'warning'
  return (
    <button
      type="button"
      className={`built-badge ${level}`}
      title="The vehicle differs from the drawing"
      onClick={() => {
        showView('otherwise')
        setStage('bench')
      }}
    >
      <LevelMark level={level} size={15} /> Built otherwise: {count}
    </button>
  )
}
