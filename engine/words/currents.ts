import { conductorName, figure, listed, partName } from './names'
import { listFact, textFact, type Wording } from './sentence'

export const currentWords: Readonly<Record<string, Wording>> = {
  C1: (f, d) => ({
    title: 'Conductor overloaded',
    text: `${conductorName(d, textFact(f, 'conductor'))} may have to carry ${f.actual ? figure(f.actual.value, f.actual.unit) : ''}${textFact(f, 'own') === 'true' ? ' (the designer’s own figure)' : ' in the worst case'}; its ampacity here is ${f.limit ? figure(f.limit.value, f.limit.unit) : ''}.`,
    todo: 'Take a thicker conductor, or one with hotter-rated insulation, or less load on it.',
  }),
  C2: (f, d) => {
    const lacks = [
      ...(textFact(f, 'discharge') === 'true' ? ['discharge'] : []),
      ...(textFact(f, 'charge') === 'true' ? ['charge'] : []),
    ]
    return {
      title: 'Limit not stated',
      text: `${partName(d, textFact(f, 'part'))} has no stated ${lacks.join(' and ')} limit, so the worst-case current of ${listed(listFact(f, 'conductors').map((id) => conductorName(d, id)))} has no bound and is not checked.`,
      todo: `Type the ${lacks.join(' and ')} limit from its data sheet.`,
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
    return {
      title: 'Voltage drop',
      text: `${partName(d, textFact(f, 'part'))} may lose ${figure(Number(f.facts.volts), 'V')} in its conductors, out and back, ${f.actual ? figure(f.actual.value, '%') : ''} with ${f.limit ? figure(f.limit.value, '%') : ''} allowed for ${textFact(f, 'service')} circuits.${share}`,
      todo: `Take a thicker or a shorter conductor${worst ? ` for ${conductorName(d, worst)} first` : ''}.`,
    }
  },
  D1: (f, d) => {
    const lacks = [
      ...(textFact(f, 'size') === 'true' ? ['size'] : []),
      ...(textFact(f, 'length') === 'true' ? ['length'] : []),
    ].join(' and ')
    const name = conductorName(d, textFact(f, 'conductor'))
    return {
      title: `No ${lacks} yet`,
      text: `${name} has no ${lacks}, so what depends on ${lacks === 'length' ? 'it' : 'them'} is not checked.`,
      todo: `Type the ${lacks} of ${name}.`,
    }
  },
  D2: (f, d) => ({
    title: 'Figure missing',
    text: `${partName(d, textFact(f, 'part'))} lacks ${listed(listFact(f, 'fields').map((x) => x.toLowerCase()))}; what depends on it is not checked.`,
    todo: 'Take it from the rating plate or the data sheet.',
  }),
}
