import { amount, numberFact } from './figures'
import { conductorName, figure, listed, partName } from './names'
import { listFact, textFact, type Wording } from './sentence'

/** " (way 3, way 4)" or nothing. */
const ways = (names: readonly string[]): string => (names.length > 0 ? ` (${listed(names)})` : '')

export const faultWords: Readonly<Record<string, Wording>> = {
  K1: (f, d) => {
    const part = partName(d, textFact(f, 'part'))
    const upstream = listFact(f, 'upstream').map((id) => partName(d, id))
    const stands = `stand${upstream.length === 1 ? 's' : ''} before it`
    const before =
      upstream.length > 0 && f.facts.perhaps === true
        ? ` ${listed(upstream)} ${stands}; whether ${upstream.length === 1 ? 'it' : 'each of them'} can interrupt what flows there is not known.`
        : upstream.length > 0
          ? ` ${listed(upstream)}, which can interrupt what flows there, ${stands} and may clear first; that ${upstream.length === 1 ? 'it does' : 'they do'} so in time is not known and not claimed.`
          : ' Nothing before it is known to interrupt that either.'
    return {
      title: 'Breaking capacity too small',
      text: `A short circuit can drive ${amount(f, 'actual')} through ${part}${ways(listFact(f, 'ways'))}, which interrupts ${amount(f, 'limit')} at most: it may burst and burn on.${before}`,
      todo:
        upstream.length > 0
          ? `Take devices for ${amount(f, 'actual')} or more, or have their maker state that the pair works together.`
          : `Take a device for ${amount(f, 'actual')} or more, or put one of that capacity at the source.`,
    }
  },
  K2: (f, d) => {
    const behind = listFact(f, 'behind').map((id) => conductorName(d, id))
    const name = conductorName(d, textFact(f, 'conductor'))
    return {
      title: 'Conductor burns before the fuse clears',
      text: `A short circuit of ${numberFact(f, 'amps', 'A')} at the end of ${name} may last ${numberFact(f, 'seconds', 's')} until ${partName(d, textFact(f, 'guard'))} clears; ${name} bears it for ${numberFact(f, 'bearsS', 's')} (I²t against k²S²).${behind.length > 0 ? ` The same goes for ${listed(behind)}.` : ''}`,
      todo: 'Take a thicker conductor, or a smaller or faster device.',
    }
  },
  K3: (f, d) => {
    const name = conductorName(d, textFact(f, 'conductor'))
    const way = textFact(f, 'way')
    const never = textFact(f, 'never') === 'true'
    return {
      title: never ? 'May never clear a far short circuit' : 'Slow on a far short circuit',
      text: `A short circuit at the far end of ${name} may drive only ${numberFact(f, 'amps', 'A')} through ${partName(d, textFact(f, 'part'))}${way ? `, ${way},` : ''} of ${numberFact(f, 'rating', 'A')}: ${never ? 'from its figures it is not known to open in any time' : `it may take ${amount(f, 'actual')}`}, with ${amount(f, 'limit')} allowed.`,
      todo: 'Take a smaller or faster device, type more of its time-current curve, or let more current reach the end by a thicker or shorter conductor.',
    }
  },
  K4: (f, d) => {
    const names = listed(listFact(f, 'batteries').map((id) => partName(d, id)))
    return textFact(f, 'code') === 'resistance-is-limit'
      ? {
          title: 'Greatest fault current not known',
          text: `The resistance of ${names} is a "not more than" figure: the true one may be far smaller, so breaking capacities are checked against the least that can flow, not the most.`,
          todo: 'Type the short-circuit current that the maker states, or a typical or measured resistance.',
        }
      : {
          title: 'Fault currents not known',
          text: `${names} ${listFact(f, 'batteries').length === 1 ? 'has' : 'have'} neither an internal resistance nor a short-circuit current, so fault currents are checked without what ${listFact(f, 'batteries').length === 1 ? 'it adds' : 'they add'}.`,
          todo: 'Take one of the two from the data sheet.',
        }
  },
  K5: (f, d) => ({
    title: 'Operating times not known',
    text: `No limits are published here for the class of ${partName(d, textFact(f, 'part'))}, so whether it clears a short circuit on ${listed(listFact(f, 'conductors').map((id) => conductorName(d, id)))} in time is not checked.`,
    todo: 'Type one point of its curve from the data sheet: a multiple of its rating, and the time in which it clears.',
  }),
  K6: (f, d) => {
    const upper = `${listed(listFact(f, 'uppers').map((id) => partName(d, id)))}${ways(listFact(f, 'upperWays'))}`
    const lower = `${partName(d, textFact(f, 'lower'))}${ways(listFact(f, 'ways'))}`
    const from = f.facts.fromA
    return {
      title: 'Both may open on one fault',
      text:
        from === undefined
          ? `${lower} of ${numberFact(f, 'lowerA', 'A')} and ${upper} of ${numberFact(f, 'upperA', 'A')} are less than 1.6 times apart: a fault behind the former may open both.`
          : `From ${figure(Number(from), 'A')} on the operating times of ${lower} and of ${upper} overlap: a fault behind the former may open both. Elsewhere nothing is claimed.`,
      todo: 'A larger step between the two ratings keeps the other circuits live.',
    }
  },
  K7: (f, d) => {
    const devices = listFact(f, 'devices').map((id) => partName(d, id))
    return {
      title: 'Not every short circuit tried',
      text: `The network is so large that only short circuits at the ends of ${listed(devices)} were tried. More may flow in another one, so whether ${devices.length === 1 ? 'it' : 'they'} can interrupt it is not checked.`,
      todo: 'Divide the design, or work out the greatest fault current there by hand.',
    }
  },
  U1: (f, d) => ({
    title: 'Voltage rating too small',
    text: `${partName(d, textFact(f, 'part'))} is rated ${amount(f, 'limit')} and may have to interrupt ${amount(f, 'actual')}: its arc may not go out.`,
    todo: 'Take one rated for that direct voltage.',
  }),
  U2: (f, d) => ({
    title: 'Breaking capacity stated at a lower voltage',
    text: `The ${numberFact(f, 'kA', 'kA')} of ${partName(d, textFact(f, 'part'))} are stated at ${amount(f, 'limit')}, and there may be ${amount(f, 'actual')}: at that voltage it interrupts less, and how much is not known.`,
    todo: `Take one whose breaking capacity is stated at ${amount(f, 'actual')} or more.`,
  }),
}
