import type { Answers } from '../../calc/answers'
import { makingOf } from '../../model/buying'
import type { Design } from '../../model/design'
import type { Making } from '../../tables/making'
import { cableStock } from './cablestock'
import { conductorSchedule } from './conductors'
import { cutList } from './cutlist'
import { dataLinks } from './datalinks'
import { fuseChart } from './fusechart'
import { lugCount } from './lugcount'
import { partsList } from './partslist'
import type { Schedule } from './schedule'
import { switchTable } from './switching'
import { terminalList } from './terminallist'

/** One kind of schedule. Key and title are those of the schedule that it makes. */
export interface ScheduleKind {
  readonly key: string
  readonly title: string
  readonly of: (design: Design, answers: Answers, making: Making) => Schedule
}

/** Every kind of schedule, in the order of the workshop pack. */
export const SCHEDULES: readonly ScheduleKind[] = [
  { key: 'conductors', title: 'Conductors', of: conductorSchedule },
  { key: 'cut-list', title: 'Cut list', of: cutList },
  { key: 'cable', title: 'Cable to buy', of: cableStock },
  { key: 'lugs', title: 'Lugs, ferrules and sleeves', of: lugCount },
  { key: 'fuses', title: 'Fuse chart', of: fuseChart },
  { key: 'switches', title: 'Relays and switches', of: switchTable },
  { key: 'terminals', title: 'Terminals', of: terminalList },
  { key: 'parts', title: 'Parts list', of: partsList },
  { key: 'data-links', title: 'Data links', of: dataLinks },
]

/** Every schedule of a design. Pure: the same design and answers, the same rows. */
export const schedulesOf = (
  design: Design,
  answers: Answers,
  making: Making = makingOf(design),
): readonly Schedule[] => SCHEDULES.map(({ of }) => of(design, answers, making))
