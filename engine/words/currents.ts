import type { Finding } from '../rules/finding'
import { conductorName, figure, listed, partName } from './names'
import { reasonWords } from './reasons'
import { listFact, textFact, type Wording } from './sentence'

/** A label inside a sentence: "Rated current" becomes "rated current", "PV …" stays. */
const inSentence = (label: string): string =>
  /^[A-Z][a-z]/.test(label) ? label[0]!.toLowerCase() + label.slice(1) : label

/** Whose figure it is that an overload is told of. */
function ownWords(f: Finding): string {
  if (f.facts.instead !== undefined)
    return ` by what is drawn, and the designer’s own figure of ${figure(Number(f.facts.instead), 'A')} stands in its place`
  return textFact(f, 'own') === 'true' ? ' (the designer’s own figure)' : ' in the worst case'
}

export const currentWords: Readonly<Record<string, Wording>> = {
  C1: (f, d) => ({
    title: f.facts.instead === undefined ? 'Conductor overloaded' : 'Own figure below the worst case',
    text: `${conductorName(d, textFact(f, 'conductor'))} may have to carry ${f.actual ? figure(f.actual.value, f.actual.unit) : ''}${ownWords(f)}; its ampacity here is ${f.limit ? figure(f.limit.value, f.limit.unit) : ''}.`,
    todo: 'Take a thicker conductor, or one with hotter-rated insulation, or less load on it.',
  }),
  C2: (f, d) => {
    const lacks = [
      ...(textFact(f, 'discharge') === 'true' ? ['discharge'] : []),
      ...(textFact(f, 'charge') === 'true' ? ['charge'] : []),
    ]
    return {
      title: 'Limit not stated',
      text: `${partName(d, textFact(f, 'part'))} has no stated ${lacks.join(' and ')} limit, so ${listFact(f, 'conductors').length > 0 ? `the worst-case current of ${listed(listFact(f, 'conductors').map((id) => conductorName(d, id)))}` : 'a worst-case current'} has no bound and is not checked.`,
      todo: `Type the ${lacks.join(' and ')} limit from its data sheet.`,
    }
  },
  C4: (f, d) => {
    const conductors = listFact(f, 'conductors').map((id) => conductorName(d, id))
    const most = conductorName(d, textFact(f, 'most'))
    return {
      title: 'Uneven sharing',
      text: `${listed(conductors)} run side by side with ${figure(Number(f.facts.total), 'A')} between them; ${most} takes ${figure(Number(f.facts.amps), 'A')} of it (an equal share is ${figure(Number(f.facts.equal), 'A')}), and ${figure(f.actual?.value ?? 0, 'A')} if the terminations of the ${conductors.length === 2 ? 'other are' : 'others are'} poor${f.limit ? `; its ampacity is ${figure(f.limit.value, 'A')}` : ''}.`,
      todo: 'Take conductors of one size and one length, with the same lugs, or one conductor that carries all.',
    }
  },
  F1: (f, d) => ({
    title: 'Fuse below its load',
    text: `${partName(d, textFact(f, 'part'))}${textFact(f, 'way') ? `, ${textFact(f, 'way')},` : ''} may have to carry ${f.actual ? figure(f.actual.value, f.actual.unit) : ''} with a rating of ${f.limit ? figure(f.limit.value, f.limit.unit) : ''}: it will open in ordinary use.`,
    todo: 'Take a larger rating that the conductor still allows, or put less on it.',
  }),
  S1: (f, d) => ({
    title: 'Contact overloaded',
    text: `The contact of ${partName(d, textFact(f, 'part'))} may have to carry ${f.actual ? figure(f.actual.value, f.actual.unit) : ''} with a rating of ${f.limit ? figure(f.limit.value, f.limit.unit) : ''}. It can overheat or weld shut.`,
    todo: 'Take a contact of a higher rating, or put less on it.',
  }),
  B1: (f, d) => ({
    title: 'Bar overloaded',
    text: `${figure(f.actual?.value ?? 0, 'A')} may pass through ${partName(d, textFact(f, 'part'))}, which is rated ${f.limit ? figure(f.limit.value, f.limit.unit) : ''}.`,
    todo: 'Take a heavier bar, or land the heaviest conductors next to each other on another one.',
  }),
  E1: (f, d) => {
    const worst = textFact(f, 'worst')
    const share = worst
      ? ` ${conductorName(d, worst)} takes the most of it, ${figure(Number(f.facts.worstV), 'V')}.`
      : ''
    const others = listFact(f, 'others').map((id) => partName(d, id))
    const more = others.length > 0 ? ` It is the cause of too much drop at ${listed(others)} as well.` : ''
    return {
      title: 'Voltage drop',
      text: `${partName(d, textFact(f, 'part'))} may lose ${figure(Number(f.facts.volts), 'V')} in its conductors, out and back: ${f.actual ? figure(f.actual.value, '%') : ''} of ${figure(Number(f.facts.ofV), 'V')}, with ${f.limit ? figure(f.limit.value, '%') : ''} allowed for ${textFact(f, 'service')} circuits.${share}${more}`,
      todo: `Check the length that is typed${worst ? ` for ${conductorName(d, worst)}` : ''}, or take a thicker or a shorter conductor${worst ? ' there first' : ''}.`,
    }
  },
  D1: (f, d) => {
    const lacks = [
      ...(textFact(f, 'size') === 'true' ? ['size'] : []),
      ...(textFact(f, 'length') === 'true' ? ['length'] : []),
    ].join(' and ')
    const name = conductorName(d, textFact(f, 'conductor'))
    if (textFact(f, 'gone') === 'true')
      return {
        title: 'Size not known',
        text: `The size that is chosen for ${name} is neither in the size catalogue nor among the own conductors of this design: its row may have been taken away.${textFact(f, 'length') === 'true' ? ' It has no length either.' : ''} What depends on it is not checked.`,
        todo: `Choose another size for ${name}, or add the own conductor again and choose that.`,
      }
    return {
      title: `No ${lacks} yet`,
      text: `${name} has no ${lacks}, so what depends on ${lacks.includes(' and ') ? 'them' : 'it'} is not checked.`,
      todo: `Type the ${lacks} of ${name}.`,
    }
  },
  D2: (f, d) => ({
    title: listFact(f, 'fields').length === 1 ? 'Figure missing' : 'Figures missing',
    text: `${partName(d, textFact(f, 'part'))} lacks ${listed(listFact(f, 'fields').map(inSentence))}; what depends on ${listFact(f, 'fields').length === 1 ? 'it' : 'them'} is not checked.`,
    todo: `Take ${listFact(f, 'fields').length === 1 ? 'it' : 'them'} from the rating plate or the data sheet.`,
  }),
  D3: (f, d) => {
    const conductors = listFact(f, 'conductors').map((id) => conductorName(d, id))
    const one = conductors.length === 1
    return {
      title: 'No ampacity',
      text: `${listed(conductors)} ${one ? 'has' : 'have'} no ampacity, because ${textFact(f, 'reason')}; neither ${one ? 'its' : 'their'} load nor ${one ? 'its' : 'their'} protection is checked.`,
      todo: 'Choose a size, insulation and surroundings that the rule set covers, or another rule set.',
    }
  },
  D4: (f, d) => {
    const names = [
      ...listFact(f, 'conductors').map((id) => conductorName(d, id)),
      ...listFact(f, 'parts').map((id) => partName(d, id)),
    ]
    return {
      title: 'Check not made',
      text: `Some check of ${listed(names)} was not made, because ${reasonWords(textFact(f, 'code'))}.`,
      todo: `Check ${names.length === 1 ? 'it' : 'them'} by hand.`,
    }
  },
  D5: (f, d) => {
    const part = partName(d, textFact(f, 'part'))
    const [system, volts] = [figure(Number(f.facts.system), 'V'), figure(Number(f.facts.volts), 'V')]
    return textFact(f, 'field') === 'ratedV'
      ? {
          title: 'Power at the wrong voltage',
          text: `The power of ${part} is counted at ${system}, but its circuit has ${volts}: its current is wrong in every figure.`,
          todo: `Type ${volts} as its rated voltage, or type its current.`,
        }
      : {
          title: 'Power at the wrong voltage',
          text: `The current of ${part} is worked out for a system of ${system}, but its circuit has ${volts}: it is wrong in every figure.`,
          todo: 'Type the lowest battery voltage at which it runs.',
        }
  },
}
