import { defineKind } from '../model/kind'
import { captions } from './caption'
import { line } from './draw'
import { number } from './field'
import { fastened, fittingField } from './fitting'
import { frameSign } from './sign'
import { terminal } from './terminal'

/** From a clean, tight chassis stud into the frame, mΩ. Common practice, no source. */
const USUAL_MOHM = 1

export const chassisPoint = defineKind({
  key: 'chassis-point',
  title: 'Chassis point',
  group: 'distribution',
  letter: 'X',
  about: "A stud on the vehicle's metal frame; all chassis points of a design are joined through the frame.",
  words: ['earth', 'ground', 'frame', 'body', 'mass', '31'],
  fields: {
    pathMOhm: number('Path resistance', 'mΩ', 'From this stud into the frame.', { initial: USUAL_MOHM }),
    fitting: fittingField('M8'),
  },
  terminals: (v) => [
    terminal('up', 2.5, 0, '31', 'chassis stud', 'any', { mark: '31', ...fastened(v.fitting) }),
  ],
  electrical: (v) => ({
    merges: [],
    branches: [],
    devices: [],
    frame: {
      terminal: '31',
      ohms: (v.pathMOhm !== null && v.pathMOhm > 0 ? v.pathMOhm : USUAL_MOHM) / 1000,
    },
  }),
  symbol: () => ({ w: 5, h: 5, marks: [line([2.5, 0, 2.5, 2.5]), ...frameSign(2.9, 2.5)] }),
  caption: () => captions(),
})
