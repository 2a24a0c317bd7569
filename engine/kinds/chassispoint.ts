import { defineKind } from '../model/kind'
import { captions } from './caption'
import { line } from './draw'
import { number } from './field'
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
  },
  terminals: () => [
    terminal('up', 2.5, 0, '31', 'chassis stud', 'any', { mark: '31', takes: 4, stud: 'M8' }),
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
