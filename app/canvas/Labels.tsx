import { memo, useMemo } from 'react'
import {
  type ConductorId,
  conductorById,
  type Mark,
  type PartId,
  partById,
  type SceneLabel,
} from '../../engine'
import { useHand } from '../store/hand'
import { laidOf } from '../store/laid'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { laidOutSeen, useSeen } from '../store/seen'
import { useView } from '../store/view'
import { Marks } from '../symbols/Marks'
import { linePath } from '../symbols/shape'
import { wordsAt } from './density'
import { wordsBesideParts } from './designations'
import { edgeToLine, leaderAlong, standsApart } from './hugging'
import { useLettering } from './lettering'

/** The labels of the newest layout. A part's label goes with it; a conductor's hides while its ends move. */
export const Labels = memo(function Labels() {
  const labels = useLatest((s) => s.scene?.labels)
  const zoom = useLettering()
  // A lens puts its own figures on the lines, and so does a design in use.
  const lens = useView((s) => s.lens !== null || s.trying)
  return labels?.map((label, i) =>
    'part' in label.of ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: labels are replaced whole with each layout
      <StandingWords key={i} label={label} part={label.of.part} zoom={zoom} />
    ) : lens ? null : (
      // biome-ignore lint/suspicious/noArrayIndexKey: labels are replaced whole with each layout
      <RunLabel key={i} label={label} run={label.of.conductor} zoom={zoom} />
    ),
  )
})

interface PartWordsProps {
  readonly label: SceneLabel
  readonly part: PartId
  readonly zoom: number
}

const StandingWords = memo(function StandingWords(of: PartWordsProps) {
  const carried = useHand((s) => s.parts.has(of.part))
  return carried ? null : <PartWords {...of} />
})

/** The words of a part, where it stands in the design. */
export const PartWords = memo(function PartWords({ label, part, zoom }: PartWordsProps) {
  const now = useSeen((s) => partById(s, part))
  const before = useLatest(() => partBefore(part))
  const words = useLatest((s) => s.scene && wordsBesideParts(s.scene, zoom).get(label))
  if (!now || !before || !words) return null
  // Flags with numbers of notes are drawn while the words stand as they were laid out.
  const whole =
    words.length === label.marks.filter((m) => m.is === 'text').length && words[0] === label.marks[0]
  return (
    <Drawn label={label} words={whole ? label.marks : words} dx={now.x - before.x} dy={now.y - before.y} />
  )
})

const RunLabel = memo(function RunLabel({
  label,
  run,
  zoom,
}: {
  label: SceneLabel
  run: ConductorId
  zoom: number
}) {
  const stands = useSeen((seen) => {
    const laidOut = laidOutSeen()
    const c = conductorById(seen, run)
    if (!laidOut || !c) return false
    return [c.from.part, c.to.part].every((id) => {
      const now = partById(seen, id)
      const then = partById(laidOut, id)
      return now && then && now.x === then.x && now.y === then.y && now.turn === then.turn
    })
  })
  const moving = useHand(({ parts, conductor }) => {
    if (parts.size === 0) return conductor === run
    const c = conductorById(useOpen.getState().design, run)
    return c !== undefined && (parts.has(c.from.part) || parts.has(c.to.part))
  })
  const laid = useLatest((s) => laidOf(s.scene, run))
  const words = useMemo(
    () =>
      laid &&
      wordsAt(
        {
          ...label,
          hugs: edgeToLine(label, laid),
          leaderAt: leaderAlong(label),
          apart: standsApart(label, laid),
        },
        zoom,
      ),
    [label, laid, zoom],
  )
  return stands && !moving && words ? <Drawn label={label} words={words} dx={0} dy={0} /> : null
})

interface DrawnProps {
  readonly label: SceneLabel
  readonly words: readonly Mark[]
  readonly dx: number
  readonly dy: number
}

function Drawn({ label, words, dx, dy }: DrawnProps) {
  if (words.length === 0) return null
  return (
    <g className="label" transform={`translate(${dx} ${dy})`}>
      {label.leader && <path className="leader" d={linePath(label.leader)} />}
      <g transform={`translate(${label.x} ${label.y})${label.turn ? ' rotate(-90)' : ''}`}>
        <Marks marks={words} />
      </g>
    </g>
  )
}

/** A part as the newest layout has it. */
function partBefore(id: PartId) {
  const laidOut = laidOutSeen()
  return laidOut && partById(laidOut, id)
}
