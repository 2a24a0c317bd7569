import { benchSection } from '../bench/bench.section'
import { commissioningSections } from '../commissioning/commissioning.section'
import { changeSections } from '../compared/changes.section'
import { handoverSections } from '../handover/handover.section'
import { drawnSections, plotSection } from './drawnsections'
import { labelSection } from './labelsection'
import { scheduleSections } from './schedulesections'
import type { PackSection } from './section'

/** Every document that a pack can hold, in the order of a pack. A document of its own kind adds one line. */
export const PACK_SECTIONS: readonly PackSection[] = [
  ...handoverSections,
  ...drawnSections,
  ...changeSections,
  ...scheduleSections,
  benchSection,
  ...commissioningSections,
  plotSection,
  labelSection,
]
