import { conductorName, figure, listed, partName } from './names'
import { listFact, textFact, type Wording } from './sentence'

export const meterWords: Readonly<Record<string, Wording>> = {
  M1: (f, d) => {
    const shunt = partName(d, textFact(f, 'shunt'))
    const amps = f.facts.amps
    const loads = listFact(f, 'loads').map((id) => partName(d, id))
    const lead = conductorName(d, textFact(f, 'lead'))
    if (loads.length > 0)
      return {
        title: 'Loads bypass the load-side shunt',
        text: `${listed(loads)} return together by ${lead}, which does not pass ${shunt}${typeof amps === 'number' ? `: up to ${figure(amps, 'A')} that is used is not shown` : ', so what they draw is not shown'}.`,
        todo: `Land ${lead} on the bar behind ${shunt}, with the other loads.`,
      }
    const load = partName(d, textFact(f, 'part'))
    return {
      title: 'Bypasses the load-side shunt',
      text: `The return of ${load} does not pass ${shunt}${typeof amps === 'number' ? `: up to ${figure(amps, 'A')} that is used is not shown` : ', so what it draws is not shown'}.`,
      todo: `Land its return on the bar behind ${shunt}, with the other loads.`,
    }
  },
  M2: (f, d) => {
    const source = partName(d, textFact(f, 'part'))
    const shunt = partName(d, textFact(f, 'shunt'))
    return {
      title: 'Source behind the load-side shunt',
      text: `${source} returns through ${shunt}: what it feeds in is taken off the load figure.`,
      todo: `Land the negative of ${source} on the battery side of ${shunt}.`,
    }
  },
  M3: (f, d) => ({
    title: 'Return is shared',
    text: `Only ${f.actual ? `about ${figure(f.actual.value, '%')}` : 'part'} of the current of ${partName(d, textFact(f, 'part'))} passes ${partName(d, textFact(f, 'shunt'))}; the rest finds another way back.`,
    todo: 'Find the second way back, commonly the chassis, and take it off.',
  }),
  M4: (f, d) => ({
    title: 'Shunt the wrong way round',
    text: `${partName(d, textFact(f, 'shunt'))} is wired the wrong way round: it shows ${textFact(f, 'role') === 'load' ? 'use as negative use' : 'draw as charge'}.`,
    todo: 'Exchange its two main terminals.',
  }),
  M5: (f, d) => ({
    title: 'Reading depends on the battery',
    text: `Batteries stand on both sides of ${partName(d, textFact(f, 'shunt'))}, so what it shows${listFact(f, 'devices').length > 0 ? ` of ${listed(listFact(f, 'devices').map((id) => partName(d, id)))}` : ''} depends on which of them supplies.`,
    todo: 'Put the shunt where the current of all batteries comes together.',
  }),
  M6: (f, d) => ({
    title: 'Bypasses the battery shunt',
    text: `The current of ${partName(d, textFact(f, 'part'))} does not pass ${partName(d, textFact(f, 'shunt'))}: the state of charge will drift away from the truth.`,
    todo: `Move its negative to the other side of ${partName(d, textFact(f, 'shunt'))}.`,
  }),
  M8: (f, d) => ({
    title: 'Shunt measures nothing',
    text: `${textFact(f, 'role') === 'load' ? 'No load' : 'Nothing that the batteries feed or that charges them'} returns through ${partName(d, textFact(f, 'shunt'))}, so it shows nothing.`,
    todo:
      textFact(f, 'role') === 'load'
        ? 'Join it between the source negative bar and the bar on which the loads return.'
        : 'Join it between the battery negatives and everything else.',
  }),
  M9: (f, d) => {
    const causes = listFact(f, 'causes').map((id) => partName(d, id))
    return {
      title: 'Foreign current through the shunt',
      text: `${partName(d, textFact(f, 'shunt'))} may be up to ${f.actual ? figure(f.actual.value, 'A') : ''} off: current of another circuit${causes.length > 0 ? ` (${listed(causes)})` : ''} runs through it.`,
      todo: 'Land the return of that circuit on the battery side of the shunt, or part the two circuits.',
    }
  },
  M7: (f, d) => ({
    title: f.level === 'danger' ? 'Shunt overloaded' : 'Shunt loaded beyond two thirds',
    text: `${partName(d, textFact(f, 'part'))}, rated ${figure(Number(f.facts.rating ?? 0), 'A')}, may carry ${f.actual ? figure(f.actual.value, f.actual.unit) : ''}; for long it should carry ${f.limit ? figure(f.limit.value, f.limit.unit) : ''} at most.`,
    todo: 'Take a shunt of a higher rating, or make sure that the peak is short.',
  }),
}
