import { amount, numberFact } from './figures'
import { conductorName, listed, partName } from './names'
import { listFact, textFact, type Wording } from './sentence'

export const pvWords: Readonly<Record<string, Wording>> = {
  V2: (f, d) => ({
    title: 'String voltage too low when hot',
    text: `With cells at ${numberFact(f, 'hot', '°C')} ${listed(listFact(f, 'arrays').map((id) => partName(d, id)))} ${listFact(f, 'arrays').length === 1 ? 'gives' : 'give'} ${amount(f, 'actual')} at most power; ${partName(d, textFact(f, 'controller'))} needs ${amount(f, 'limit')} to charge.`,
    todo: 'Put more modules in series, as far as the cold voltage allows.',
  }),
  V6: (f, d) => {
    const array = partName(d, textFact(f, 'array'))
    const open = f.actual
      ? ` With the battery off, up to ${amount(f, 'actual')} of the array stand on everything there, at ${numberFact(f, 'coldest', '°C')}.`
      : ''
    return {
      title: 'Array without a controller',
      text: `${array} is joined straight to a circuit of ${amount(f, 'limit')}: nothing ends the charge.${open}`,
      todo: 'Put a solar controller between them.',
    }
  },
  V3: (f, d) => {
    const part = partName(d, textFact(f, 'part'))
    const fitted = Number(f.facts.fitted ?? 0)
    const none = Number(f.facts.bears) <= Number(f.facts.above)
    const range = `above ${numberFact(f, 'above', 'A')} and below ${numberFact(f, 'below', 'A')}, and no more than ${numberFact(f, 'bears', 'A')}`
    return fitted === 0
      ? {
          title: 'String fuses needed',
          text: `The other strings can push ${amount(f, 'actual')} into a faulty string of ${part}; its modules bear ${amount(f, 'limit')}.`,
          todo: none
            ? `Put fewer strings side by side, or each on a controller of its own: no fuse both bears the current of a string, from ${numberFact(f, 'above', 'A')} on, and spares the modules.`
            : `Fit a fuse in each string, rated ${range}, for the cold string voltage.`,
        }
      : {
          title: 'String fuse out of range',
          text: `The string fuses of ${part} are rated ${amount(f, 'actual')}; the range is ${range}.`,
          todo: none
            ? 'Put fewer strings side by side, or each on a controller of its own: no rating is within the range.'
            : 'Take a rating within the range.',
        }
  },
  V4: (f, d) => ({
    title: 'PV conductor below 1.56 × Isc',
    text: `${conductorName(d, textFact(f, 'conductor'))} should carry ${amount(f, 'actual')} (1.56 × ${numberFact(f, 'isc', 'A')}); its ampacity here is ${amount(f, 'limit')}.`,
    todo: 'Take a thicker conductor, or one with hotter-rated insulation.',
  }),
  V5: (f, d) => ({
    title: 'Array current above the controller’s limit',
    text: `${listed(listFact(f, 'arrays').map((id) => partName(d, id)))} can give ${amount(f, 'actual')} into a short circuit; ${partName(d, textFact(f, 'controller'))} may see ${amount(f, 'limit')}.`,
    todo: 'Put fewer strings in parallel, or take a larger controller.',
  }),
}
