import type { ValuesOf } from '../model/fields'
import { defineKind } from '../model/kind'
import { captions, figure, plain } from './caption'
import { gives } from './device'
import { arrow, line, rect, text } from './draw'
import { count, counted, number, result } from './field'
import { fittingField } from './fitting'
import { supplyTerminals } from './supply'

/** Irradiance above the standard 1000 W/m²: 1.25 (NEC 690.8(A)(1), as restated in public). */
const IRRADIANCE = 1.25

const series = count('Modules in series', 'Modules one after the other in each string.', 1, 1, 20)
const parallel = count('Strings in parallel', 'Strings side by side.', 1, 1, 20)

const fields = {
  series,
  parallel,
  moduleW: number('Module power', 'W', 'Rated power of one module.', { group: 'Module' }),
  vocV: number('Open-circuit voltage', 'V', 'Of one module at 25 °C.', { required: true, group: 'Module' }),
  iscA: number('Short-circuit current', 'A', 'Of one module.', { required: true, group: 'Module' }),
  vmpV: number('Voltage at most power', 'V', 'Of one module.', { required: true, group: 'Module' }),
  impA: number('Current at most power', 'A', 'Of one module.', { required: true, group: 'Module' }),
  vocPerKelvin: number(
    'Voltage coefficient',
    '%/K',
    'Change of the open-circuit voltage with temperature, negative. Empty: the general table is used.',
    { min: -1, max: 0, group: 'Module' },
  ),
  maxFuseA: number('Largest series fuse', 'A', 'Largest fuse in series that the module bears.', {
    required: true,
    group: 'Module',
  }),
  stringFuseA: number(
    'String fuse',
    'A',
    'Rating of the fuse in each string, where strings have one. Empty: none is fitted.',
  ),
  fitting: fittingField('PV connector'),
  arrayIscA: result('Array short-circuit current', 'A', 'Short-circuit current of all strings.'),
  arrayMaxA: result('Greatest current', 'A', 'The same times 1.25, for sun stronger than the standard one.'),
  arrayVocV: result('String open-circuit voltage', 'V', 'At 25 °C; more when cold.'),
  arrayW: result('Array power', 'W', 'Rated power of all modules.'),
}
type PvValues = ValuesOf<typeof fields>

const times = (n: number | null, by: number): number | null => (n === null ? null : n * by)

/** Short-circuit current of the whole array, A. */
const arrayIsc = (v: PvValues): number | null => times(v.iscA, counted(v.parallel, parallel))

/** Open-circuit voltage of a string, V at 25 °C. */
const arrayVoc = (v: PvValues): number | null => times(v.vocV, counted(v.series, series))

const modulePower = (v: PvValues): number | null =>
  v.moduleW ?? (v.vmpV === null ? null : times(v.impA, v.vmpV))

const arrayPower = (v: PvValues): number | null =>
  times(modulePower(v), counted(v.series, series) * counted(v.parallel, parallel))

export const pvArray = defineKind({
  key: 'pv-array',
  title: 'PV array',
  group: 'sources',
  letter: 'G',
  about: 'Photovoltaic modules of one type, in strings side by side.',
  words: ['solar', 'panel', 'module', 'photovoltaic', 'string'],
  fields,
  terminals: supplyTerminals,
  electrical: (v) => ({
    merges: [],
    branches: [],
    devices: [
      gives(
        {
          key: 'array',
          positive: '+',
          negative: '-',
          array: { watts: arrayPower(v), volts: times(v.vmpV, counted(v.series, series)) },
        },
        times(arrayIsc(v), IRRADIANCE),
      ),
    ],
  }),
  results: (v) => ({
    arrayIscA: arrayIsc(v),
    arrayMaxA: times(arrayIsc(v), IRRADIANCE),
    arrayVocV: arrayVoc(v),
    arrayW: arrayPower(v),
  }),
  symbol: () => ({
    w: 15,
    h: 12.5,
    marks: [
      line([15, 2.5, 6.25, 2.5, 6.25, 5.5]),
      line([6.25, 7, 6.25, 10, 15, 10]),
      line([3.75, 5.5, 8.75, 5.5]),
      line([5, 7, 7.5, 7], { pen: 'strong' }),
      rect(2.5, 3.75, 7.5, 5),
      ...arrow(0.5, 0.5, 3, 3),
      ...arrow(2.75, 0.25, 5.25, 2.75),
      text(13.75, 2, '+', { anchor: 'middle' }),
      text(13.75, 9.5, '−', { anchor: 'middle' }),
    ],
  }),
  caption: (v) =>
    captions(
      `${counted(v.series, series)}s × ${counted(v.parallel, parallel)}p, ${figure(arrayPower(v), 'W')}`,
      electricalWords(v),
    ),
})

/** Figures of the array; beside them those of one module, where they are not the same. */
function electricalWords(v: PvValues): string {
  const [voc, isc] = [arrayVoc(v), arrayIsc(v)]
  if (v.vocV === null || v.iscA === null || voc === null || isc === null) return ''
  const array = `Voc ${plain(voc)} V, Isc ${plain(isc)} A`
  const one = voc === v.vocV && isc === v.iscA
  return one ? array : `array ${array} (module ${plain(v.vocV)} V, ${plain(v.iscA)} A)`
}
