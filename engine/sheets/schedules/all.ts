import type { Answers } from '../../calc/answers'
import type { Design } from '../../model/design'
import { type Making, USUAL_MAKING } from '../../tables/making'
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

/** Every schedule of a design, in the order of the workshop pack. Pure: the same design and answers, the same rows. */
export const schedulesOf = (
  design: Design,
  answers: Answers,
  making: Making = USUAL_MAKING,
): readonly Schedule[] => [
  conductorSchedule(design, answers, making),
  cutList(design, answers, making),
  cableStock(design, answers, making),
  lugCount(design, answers),
  fuseChart(design, answers),
  switchTable(design, answers),
  terminalList(design, answers),
  partsList(design, answers, making),
  dataLinks(design, answers),
]
