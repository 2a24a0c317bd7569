import { figure, listed, partName } from './names'
import { listFact, textFact, type Wording } from './sentence'

export const joinWords: Readonly<Record<string, Wording>> = {
  J1: (f, d) => ({
    title: textFact(f, 'source') === 'true' ? 'Short circuit' : 'Both poles joined',
    text: `Both terminals of ${partName(d, textFact(f, 'part'))} are joined to each other through conductors, fuses or contacts.`,
    todo: 'Follow the drawing from one terminal to the other and take off the join that is wrong.',
  }),
  J2: (f, d) => {
    const lacks = textFact(f, 'lacks')
    return lacks === 'both'
      ? {
          title: 'Not joined yet',
          text: `${partName(d, textFact(f, 'part'))} is not joined to anything.`,
          todo: 'Join it, or take it off the sheet.',
        }
      : {
          title: lacks === 'negative' ? 'No return' : 'No feed',
          text: `${partName(d, textFact(f, 'part'))} has no ${lacks === 'negative' ? 'return' : 'feed'}, so it is in no figure.`,
          todo: `Join its ${lacks} terminal.`,
        }
  },
  J3: (f, d) => ({
    title: 'Sources in a ring',
    text: `${listed(listFact(f, 'devices').map((id) => partName(d, id)))} feed each other in a ring: one of them is commonly reversed. Protection is not checked until this is mended.`,
    todo: 'Check the polarity of each.',
  }),
  L1: (f, d) => ({
    title: 'No data port for it',
    text: `${listed(listFact(f, 'devices').map((id) => partName(d, id)))} ${listFact(f, 'devices').length === 1 ? 'needs a wired data port and has' : 'need a wired data port and have'} none; ${figure(f.actual?.value ?? 0, '')} ports are needed and ${figure(f.limit?.value ?? 0, '')} are there.`,
    todo: 'Add a data expander, or a hub with more ports.',
  }),
  J4: (f, d) => ({
    title: 'Too many lugs on one terminal',
    text: `${figure(f.actual?.value ?? 0, '')} conductors end at ${textFact(f, 'terminal')} of ${partName(d, textFact(f, 'part'))}, which takes ${figure(f.limit?.value ?? 0, '')}.`,
    todo: 'Spread them over a bar.',
  }),
  V1: (f, d) => ({
    title: 'String over voltage when cold',
    text: `At ${textFact(f, 'coldest')} °C the open string gives ${figure(f.actual?.value ?? 0, 'V')} at ${partName(d, textFact(f, 'controller'))}, which takes ${figure(f.limit?.value ?? 0, 'V')} at most.`,
    todo: 'Put fewer modules in series, or take a controller for a higher voltage.',
  }),
  X1: (f, d) => ({
    title: 'Part not known here',
    text: `${partName(d, textFact(f, 'part'))} is of a kind ("${textFact(f, 'kind')}") that this version does not know. Nothing that runs through it is checked.`,
    todo: 'Open the design with the version that made it, or put a known part in its place.',
  }),
}
