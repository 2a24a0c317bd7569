import { apply } from '../../../engine/edit/apply'
import { sizeIt } from '../../../engine/index'
import type { Design } from '../../../engine/model/design'

/** The design with every size and rating that the tool itself chooses for it. Throws where nothing holds. */
export function sized(design: Design): Design {
  const sizing = sizeIt(design, 'all')
  if ('infeasible' in sizing) throw new Error(JSON.stringify(sizing.infeasible))
  const result = apply(design, sizing.edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}
