import { conductorName, counted, figure, listed, partName } from './names'
import { listFact, textFact, type Wording } from './sentence'

export const joinWords: Readonly<Record<string, Wording>> = {
  J1: (f, d) => ({
    title: textFact(f, 'source') === 'true' ? 'Short circuit' : 'Both poles joined',
    text: `Both terminals of ${partName(d, textFact(f, 'part'))} are joined to each other through conductors, fuses or contacts.`,
    todo: 'Follow the drawing from one terminal to the other and take off the join that is wrong.',
  }),
  J2: (f, d) => {
    const part = partName(d, textFact(f, 'part'))
    const lacks = textFact(f, 'lacks')
    if (lacks === 'both')
      return {
        title: 'Not joined yet',
        text: `${part} is not joined to anything.`,
        todo: 'Join it, or take it off the sheet.',
      }
    const title = lacks === 'negative' ? 'Return is not joined' : 'Feed is not joined'
    return lacks === 'negative' && textFact(f, 'frame') === 'true'
      ? {
          title,
          text: `${part} returns through its case, but nothing else is joined to the frame, so its current is in no figure.`,
          todo: 'Draw a chassis point and join the battery negative to it.',
        }
      : {
          title,
          text: `Nothing is joined to the terminal "${textFact(f, 'terminal')}" of ${part}, so its current is in no figure.`,
          todo: `Join a ${lacks === 'negative' ? 'return' : 'feed'} to that terminal.`,
        }
  },
  J3: (f, d) => ({
    title: 'Sources in a ring',
    text: `${listed(listFact(f, 'devices').map((id) => partName(d, id)))} feed each other in a ring: one of them is commonly reversed. Protection is not checked until this is mended.`,
    todo: 'Check the polarity of each.',
  }),
  J5: (f, d) =>
    textFact(f, 'what') === 'mains'
      ? {
          title: 'Mains joined to extra-low voltage',
          text: `${conductorName(d, textFact(f, 'conductor'))} joins a mains terminal to something that is not mains.`,
          todo: 'Take it off. Mains wiring is for licensed persons only.',
        }
      : {
          title: 'Data port joined to something else',
          text: `${conductorName(d, textFact(f, 'conductor'))} joins a data port to something that is not a data port; what it would carry is in no figure.`,
          todo: 'Take it to a data port, or to a power terminal.',
        },
  J6: (f, d) => {
    const parts = listFact(f, 'parts')
    const one = parts.length === 1
    return {
      title: 'No source feeds it',
      text: `No source reaches both terminals of ${listed(parts.map((id) => partName(d, id)))}, so ${one ? 'its current is' : 'their currents are'} in no figure.`,
      todo: `Follow the feed and the return of ${one ? 'the load' : 'each load'} back to the batteries and draw what is missing.`,
    }
  },
  J7: (f, d) => ({
    title: 'Joined the wrong way round',
    text: `${partName(d, textFact(f, 'part'))} has its positive terminal on the negative side and its negative terminal on the positive side${textFact(f, 'coil') === 'true' ? ' (a coil without a diode would still work)' : ''}. Its current counts the wrong way in every figure.`,
    todo: 'Exchange its two conductors.',
  }),
  J8: (f, d) => ({
    title: 'Both ends at one place',
    text: `Both ends of ${conductorName(d, textFact(f, 'conductor'))} are at one place, so it carries nothing.`,
    todo: 'Take one end to where it was meant to go, or take the conductor off.',
  }),
  L1: (f, d) => {
    const devices = listFact(f, 'devices')
    const names = listed(devices.map((id) => partName(d, id)))
    const one = devices.length === 1
    const [needed, there] = [f.actual?.value ?? 0, f.limit?.value ?? 0]
    return needed > there
      ? {
          title: one ? 'No data port for it' : 'No data ports for them',
          text: `${names} ${one ? 'needs a wired data port and has' : 'need a wired data port and have'} none; ${counted(needed, 'port is', 'ports are')} needed and ${counted(there, 'is', 'are')} there.`,
          todo: 'Add a data expander, or a hub with more ports.',
        }
      : {
          title: 'Not joined to a hub',
          text: `${names} ${one ? 'has a data lead that reaches' : 'have data leads that reach'} no hub.`,
          todo: `Join ${one ? 'it' : 'each'} to a free port of the hub or of a data expander.`,
        }
  },
  J4: (f, d) => ({
    title: 'Too many lugs on one terminal',
    text: `${counted(f.actual?.value, 'conductor ends', 'conductors end')} at ${textFact(f, 'terminal')} of ${partName(d, textFact(f, 'part'))}, which takes ${figure(f.limit?.value ?? 0, '')}.`,
    todo: textFact(f, 'data') === 'true' ? 'Give each a port of its own.' : 'Spread them over a bar.',
  }),
  V1: (f, d) => {
    const controller = partName(d, textFact(f, 'controller'))
    const cold = `${textFact(f, 'coldest')} °C`
    return f.level === 'not-checked'
      ? {
          title: 'Cold voltage not known',
          text: `The open-circuit voltage at ${controller} at ${cold} is not known, so it is not checked against what ${controller} takes.`,
          todo: 'Type the open-circuit voltage and the voltage coefficient of the modules from their data sheet.',
        }
      : {
          title: 'String over voltage when cold',
          text: `At ${cold} the open string gives ${figure(f.actual?.value ?? 0, 'V')} at ${controller}, which takes ${figure(f.limit?.value ?? 0, 'V')} at most.`,
          todo: 'Put fewer modules in series, or take a controller for a higher voltage.',
        }
  },
  X2: (f) => ({
    title: 'Rule set not known here',
    text: `The design names a rule set ("${textFact(f, 'named')}") that this version does not know. All checks were made against ${textFact(f, 'used')} instead.`,
    todo: 'Choose a rule set, or open the design with the version that made it.',
  }),
  X3: (f, d) => ({
    title: 'Not every switch position tried',
    text: untriedText(
      listFact(f, 'parts').map((id) => partName(d, id)),
      listFact(f, 'devices').map((id) => partName(d, id)),
    ),
    todo: 'Part the design so that fewer of them stand in one ring or work on one circuit, or check these currents by hand.',
  }),
  X1: (f, d) => ({
    title: 'Part not known here',
    text: `${partName(d, textFact(f, 'part'))} is of a kind ("${textFact(f, 'kind')}") that this version does not know. Nothing that runs through it is checked.`,
    todo: 'Open the design with the version that made it, or put a known part in its place.',
  }),
}

function untriedText(switches: readonly string[], devices: readonly string[]): string {
  const untried = `${listed(switches)} can stand in more combinations than were tried; currents that hang on them are not checked.`
  if (devices.length === 0) return untried
  const unasked = `Switches stand in so many positions that fault currents through ${listed(devices)} are not checked.`
  return switches.length === 0 ? unasked : `${untried} ${unasked}`
}
