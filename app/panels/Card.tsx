import { useLayoutEffect, useRef } from 'react'
import { conductorById, partById } from '../../engine'
import { useOpen } from '../store/open'
import { useView } from '../store/view'
import { DesignCard } from './DesignCard'
import { ManyCard } from './ManyCard'
import { PartCard } from './PartCard'
import { RunCard } from './RunCard'
import { TextCard } from './TextCard'
import { ZoneCard } from './ZoneCard'

/** The card of what is selected: one part, one conductor, several things, or the design itself. */
export function Card() {
  const parts = useView((s) => s.parts)
  const conductors = useView((s) => s.conductors)
  const design = useOpen((s) => s.design)
  // A finding speaks of one conductor and the parts it starts from: its card is that of the conductor.
  const finding = useView((s) => s.finding !== null)
  const oneRun =
    conductors.size === 1 && (parts.size === 0 || finding)
      ? conductorById(design, [...conductors][0]!)
      : undefined
  const onePart = parts.size === 1 && conductors.size === 0 ? partById(design, [...parts][0]!) : undefined
  const zoneId = useView((s) => s.zone)
  const texts = useView((s) => s.texts)
  const zone = design.zones?.find((z) => z.id === zoneId)
  const oneText =
    texts.size === 1 && parts.size + conductors.size === 0
      ? design.texts?.find((t) => texts.has(t.id))
      : undefined
  const many = parts.size + conductors.size > 1
  const card = useRef<HTMLElement>(null)
  const of = zone?.id ?? oneText?.id ?? onePart?.id ?? oneRun?.id ?? (many ? 'many' : 'design')
  // biome-ignore lint/correctness/useExhaustiveDependencies: each thing's card is read from its head
  useLayoutEffect(() => {
    // Newer browsers give a promise here, which an effect must not hand back.
    card.current?.scrollTo(0, 0)
  }, [of])
  return (
    <section ref={card} className="card" aria-label="Card">
      {zone ? (
        <ZoneCard key={zone.id} zone={zone} />
      ) : oneText ? (
        <TextCard key={oneText.id} text={oneText} />
      ) : onePart ? (
        <PartCard key={onePart.id} part={onePart} />
      ) : oneRun ? (
        <RunCard key={oneRun.id} conductor={oneRun} />
      ) : many ? (
        <ManyCard parts={[...parts]} conductors={[...conductors]} />
      ) : (
        <DesignCard />
      )}
    </section>
  )
}
