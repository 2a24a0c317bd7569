import type { Design } from '../model/design'
import type { Finding } from '../rules/finding'
import { conductorName, figure, listed, partName } from './names'
import { listFact, textFact, type Wording } from './sentence'

/** "the returns W4 and W6": those that the same cause leaves without limit or too thin; empty where there are none. */
function returnsToo(f: Finding, d: Design): string {
  const returns = listFact(f, 'returns').map((id) => conductorName(d, id))
  return returns.length === 0 ? '' : `the ${returns.length === 1 ? 'return' : 'returns'} ${listed(returns)}`
}

export const protectionWords: Readonly<Record<string, Wording>> = {
  P1: (f, d) => {
    const name = conductorName(d, textFact(f, 'conductor'))
    const source = textFact(f, 'source')
    const way = listFact(f, 'way').map((id) => conductorName(d, id))
    const from = source === '' ? 'A source' : partName(d, source)
    const { aheadM, allowedM } = f.facts
    const short = typeof aheadM === 'number' && typeof allowedM === 'number' && allowedM > 0
    const ahead = short
      ? ` It runs ${figure(aheadM, 'm')} from the source to the device behind it, with ${figure(allowedM, 'm')} allowed.`
      : ''
    const behind = listFact(f, 'behind').map((id) => conductorName(d, id))
    const any = behind.length === 0 ? name : 'any of them'
    const returns = returnsToo(f, d)
    return {
      title: 'No protection',
      text: `${from} reaches ${name}${behind.length > 0 ? `, and through it ${listed(behind)},` : ''} through no fuse or breaker${way.length > 0 ? ` (by way of ${listed(way)})` : ''}. A short on ${any} would be fed without limit${returns === '' ? '' : `, and ${returns} would carry it without limit`}.${ahead}`,
      todo: `Fit a fuse or breaker between ${from} and ${name}, at the source, or land ${name} on a fused way${short ? `, or bring the device behind it to within ${figure(allowedM, 'm')} of the source` : ''}.`,
    }
  },
  P2: (f, d) => {
    const name = conductorName(d, textFact(f, 'conductor'))
    const guard = partName(d, textFact(f, 'guard'))
    const lets = f.actual ? figure(f.actual.value, f.actual.unit) : ''
    const may = f.limit ? figure(f.limit.value, f.limit.unit) : ''
    const behind = listFact(f, 'behind').map((id) => conductorName(d, id))
    const more = behind.length > 0 ? ` It is too big for ${listed(behind)} as well.` : ''
    const returns = returnsToo(f, d)
    const also = returns === '' ? '' : ` A fault would overload ${returns} too.`
    return textFact(f, 'is') === 'source'
      ? {
          title: 'Source stronger than the conductor',
          text: `${guard} can feed ${lets} into ${name} for as long as the fault lasts; the rule set allows ${may}.${more}${also}`,
          todo: `Fit a device of ${may} or less in ${name}, or take ${behind.length > 0 ? 'thicker conductors' : 'a thicker conductor'}.`,
        }
      : {
          title: 'Protective device too big',
          text: `${guard} protects ${name} with ${lets}; for this conductor the rule set allows ${may}.${more}${also}`,
          todo: `Fit a device of ${may} or less, or take ${behind.length > 0 ? 'thicker conductors' : 'a thicker conductor'}.`,
        }
  },
  P3: (f, d) => {
    const behind = listFact(f, 'behind').map((id) => conductorName(d, id))
    const more = behind.length > 0 ? ` The same goes for ${listed(behind)}.` : ''
    const name = conductorName(d, textFact(f, 'conductor'))
    const guards = listed(listFact(f, 'guards').map((id) => partName(d, id)))
    const sum = f.actual ? figure(f.actual.value, f.actual.unit) : ''
    const may = f.limit ? figure(f.limit.value, f.limit.unit) : ''
    const todo = `Take ${behind.length > 0 ? 'thicker conductors' : 'a thicker conductor'}, or smaller devices, so that their sum is within.`
    return f.facts.ahead === true
      ? {
          title: 'Devices behind add up',
          text: `${name} runs ahead of the first devices, and ${guards} let ${sum} through it together, with ${may} allowed. Each alone is within.${more}`,
          todo,
        }
      : {
          title: 'Sources add up',
          text: `A short on ${name} is fed through ${guards} together: ${sum}, with ${may} allowed. Each alone is within.${more}`,
          todo,
        }
  },
  P4: (f, d) => ({
    title: 'Ahead of the first device',
    text: `${conductorName(d, textFact(f, 'conductor'))} runs ahead of the device that would protect it: ${f.actual ? figure(f.actual.value, f.actual.unit) : ''} from the source, with ${f.limit ? figure(f.limit.value, f.limit.unit) : ''} allowed by the rule set.`,
    todo: 'Keep it that short, and protect it against chafing and against contact with metal.',
  }),
  P5: (f, d) => ({
    title: 'Return too thin',
    text: `With a fault in the system ${conductorName(d, textFact(f, 'conductor'))} can carry ${f.actual ? figure(f.actual.value, f.actual.unit) : ''} for as long as no fuse blows${listFact(f, 'guards').length > 0 ? ` (${listed(listFact(f, 'guards').map((id) => partName(d, id)))})` : ''}; the rule set allows ${f.limit ? figure(f.limit.value, f.limit.unit) : ''}.`,
    todo: 'Take a return as thick as the feed that it belongs to, or a smaller fuse on the feed.',
  }),
}
