import type { Design } from '../../model/design'
import { type FuseFind, fuseFinds } from './finder'
import { type Isolation, isolationOf } from './isolation'
import { type Picture, pictureOf } from './picture'
import { type PlaceOf, placesOf } from './places'
import { type Readings, readingsOf } from './readings'
import { type Store, storedWh, storesOf } from './stores'
import { type SwitchEffect, switchEffects } from './switches'

/** Everything that the handover pack tells of a design; its words come from `words/handover`. */
export interface HandoverFacts {
  readonly design: Design
  readonly finds: readonly FuseFind[]
  readonly switches: readonly SwitchEffect[]
  readonly isolation: Isolation
  readonly readings: Readings
  readonly places: readonly PlaceOf[]
  readonly stores: readonly Store[]
  /** Wh of the full system batteries; null: not known. */
  readonly storedWh: number | null
  readonly picture: Picture
}

/** Remembered weakly for each array of parts, and while all that the facts hang on is the same. */
const remembered = new WeakMap<Design['parts'], HandoverFacts>()

const isSame = (a: Design, b: Design): boolean =>
  a.conductors === b.conductors &&
  a.ownConductors === b.ownConductors &&
  a.settings.systemV === b.settings.systemV

/**
 * Worked out once for each design, and not again when words alone change: a load flow for each source and a few more,
 * and a walk over the wiring for each fuse and switch. Never throws on a design that the reader accepts.
 */
export function handoverFacts(design: Design): HandoverFacts {
  const known = remembered.get(design.parts)
  if (known && isSame(known.design, design)) return known.design === design ? known : { ...known, design }
  const facts = found(design)
  remembered.set(design.parts, facts)
  return facts
}

function found(design: Design): HandoverFacts {
  const finds = fuseFinds(design)
  const readings = readingsOf(design)
  const stores = storesOf(design)
  return {
    design,
    finds,
    switches: switchEffects(design),
    isolation: isolationOf(design),
    readings,
    places: placesOf(design),
    stores,
    storedWh: storedWh(stores),
    picture: pictureOf(design, finds, readings, stores),
  }
}
