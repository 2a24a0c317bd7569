import type { PaperSize } from '../paper'
import type { PageForm } from '../schedules/page'

/** The page for tables that goes with a schematic: upright A4 with A4, A3 across with the larger ones. */
export const tableForm = (paper: PaperSize): PageForm => (paper === 'A4' ? 'A4-portrait' : 'A3-landscape')
