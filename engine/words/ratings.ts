import { amount, numberFact } from './figures'
import { formWords, piecesFor } from './forms'
import { conductorName, listed, partName } from './names'
import { listFact, textFact, type Wording } from './sentence'

/** "F5 loads block, way 3 (pump)". */
const device: (...of: Parameters<Wording>) => string = (f, d) =>
  [partName(d, textFact(f, 'part')), textFact(f, 'way')].filter((x) => x !== '').join(', ')

export const ratingWords: Readonly<Record<string, Wording>> = {
  F2: (f, d) => {
    const load = partName(d, textFact(f, 'load'))
    const lasts = numberFact(f, 'lasts', 's')
    const text = `While ${load} starts, ${amount(f, 'actual')} may flow for ${lasts} through ${device(f, d)} of ${amount(f, 'limit')}`
    if (f.level === 'not-checked')
      return {
        title: 'Starting current not checked',
        text: `${text}; no limits are published here for its class, so whether it holds is not checked.`,
        todo: 'Type from its data sheet a current that it surely holds, and for how long.',
      }
    return f.level === 'warning'
      ? {
          title: 'Opens when a load starts',
          text: `${text}, which clears that within ${numberFact(f, 'time', 's')}.`,
          todo: 'Take a larger rating that the conductor still allows, or a slower class.',
        }
      : {
          title: 'May open when a load starts',
          text: `${text}, which is only sure to hold that for ${numberFact(f, 'time', 's')}.`,
          todo: 'Compare with the curve of the fuse at hand.',
        }
  },
  F3: (f, d) => ({
    title: 'Fuse loaded for hours',
    text: `${device(f, d)} may carry ${amount(f, 'actual')} for hours; of its ${numberFact(f, 'rating', 'A')} it bears ${numberFact(f, 'percent', '%')} for ever, ${amount(f, 'limit')}.`,
    todo: 'Take a larger rating that the conductor still allows, or a device rated for continuous duty.',
  }),
  F4: (f, d) => ({
    title: 'No such rating',
    text: `${device(f, d)} is given ${amount(f, 'actual')}, which is no usual rating of a ${textFact(f, 'form')}.`,
    todo: 'Check the figure against the fuse at hand.',
  }),
  F5: (f, d) => ({
    title: 'Fuse too large for its way',
    text: `${device(f, d)} holds a fuse of ${amount(f, 'actual')}; a way of this block may hold ${amount(f, 'limit')}.`,
    todo: 'Move this circuit to a device of its own, or divide it.',
  }),
  F6: (f, d) => ({
    title: 'No way left',
    text: `All ${numberFact(f, 'ways', '')} ways of ${partName(d, textFact(f, 'part'))} are taken.`,
    todo: 'A block with a way to spare leaves room for a further load.',
  }),
  C3: (f, d) => ({
    title: 'Thinner than the least size',
    text: `${conductorName(d, textFact(f, 'conductor'))} has ${amount(f, 'actual')} of copper; the rule set asks for ${amount(f, 'limit')} ${textFact(f, 'sheathed') === 'true' ? 'inside a sheath' : 'laid by itself'}.`,
    todo: 'Take a thicker conductor; a very thin one breaks before it burns.',
  }),
  J10: (f, d) => ({
    title: 'Bond to the frame too thin',
    text: `${conductorName(d, textFact(f, 'bond'))} bonds the frame with ${amount(f, 'actual')}; the battery's own lead ${conductorName(d, textFact(f, 'lead'))} asks for ${amount(f, 'limit')}. A feed that chafes through on the bodywork comes back through the bond.`,
    todo: "Take a bond as thick as the battery's lead.",
  }),
  J9: (f, d) => ({
    title:
      textFact(f, 'thick') === 'true'
        ? 'Conductor too thick for the terminal'
        : 'Conductor too thin for the terminal',
    text: `${conductorName(d, textFact(f, 'conductor'))} of ${amount(f, 'actual')} ends at ${textFact(f, 'terminal')} of ${partName(d, textFact(f, 'part'))} (${formWords(textFact(f, 'stud'))}); ${piecesFor(textFact(f, 'stud'))} for that are commonly made ${textFact(f, 'thick') === 'true' ? 'up to' : 'from'} ${amount(f, 'limit')}${textFact(f, 'thick') === 'true' ? '' : ' on'}.`,
    todo: 'Check that there is a lug or ferrule that fits; never drill one out, and never cut strands away.',
  }),
  J11: (f, d) => {
    const parts = listFact(f, 'parts')
    return {
      title: 'Fitting not stated',
      text: `How conductors are fastened to ${listed(parts.map((id) => partName(d, id)))} is not stated, so whether a lug or ferrule fits is not checked.`,
      todo: `Take the fitting from the data sheet of ${parts.length === 1 ? 'the part' : 'each part'} and choose it on the card.`,
    }
  },
  R1: (f, d) => ({
    title: 'Charged harder than allowed',
    text: `${listed(listFact(f, 'chargers').map((id) => partName(d, id)))} can push ${amount(f, 'actual')} together into ${listed(listFact(f, 'batteries').map((id) => partName(d, id)))}, which may take ${amount(f, 'limit')}.`,
    todo: 'Set the chargers to less, or add battery capacity.',
  }),
  R2: (f, d) => {
    const names = listed(listFact(f, 'batteries').map((id) => partName(d, id)))
    return textFact(f, 'what') === 'voltage'
      ? {
          title: 'Unequal batteries in parallel',
          text: `${names} stand side by side with nominal voltages of ${listed(listFact(f, 'volts').map((v) => `${v} V`))}: the higher drives a fault current into the lower.`,
          todo: 'Take them apart.',
        }
      : {
          title: 'Different chemistries in parallel',
          text: `${names} are of different chemistries and stand side by side: they share charge and load unevenly and want different charging.`,
          todo: 'Use one type in a bank, or put a charger or a combiner between them.',
        }
  },
  R3: (f, d) =>
    f.level === 'not-checked'
      ? {
          title: 'Voltage of the circuit not known',
          text: `${partName(d, textFact(f, 'part'))} is rated ${amount(f, 'limit')}; nothing in the drawing tells what voltage its circuit has, so this is not checked.`,
          todo: 'Join its circuit to a battery or a converter whose voltage is stated.',
        }
      : {
          title: f.level === 'danger' ? 'Voltage too high for the load' : 'Voltage too low for the load',
          text: `${partName(d, textFact(f, 'part'))} is rated ${amount(f, 'limit')}, and its circuit has ${amount(f, 'actual')}.`,
          todo: 'Feed it from a converter of its voltage, or take one for this voltage.',
        },
  R5: (f, d) => {
    const part = partName(d, textFact(f, 'part'))
    if (f.level === 'not-checked')
      return {
        title: 'Coil voltage not checked',
        text: `${part} is made for ${amount(f, 'limit')}; nothing in the drawing tells what voltage works it, so this is not checked.`,
        todo: 'Join what works it to a battery or a converter whose voltage is stated.',
      }
    const high = f.level === 'danger'
    return {
      title: high ? 'Voltage too high for the coil' : 'Voltage too low for the coil',
      text: `${part} is made to be worked by ${amount(f, 'limit')}, and ${amount(f, 'actual')} works it: ${high ? 'its coil overheats' : 'it may not pull in, or chatter'}.`,
      todo: `Take one made for ${amount(f, 'actual')}, or work it from a circuit of ${amount(f, 'limit')}.`,
    }
  },
  R6: (f, d) => {
    const loads = listFact(f, 'loads').map((id) => partName(d, id))
    const supplies = listed(
      listFact(f, 'supplies').map((id) => partName(d, id)),
      3,
    )
    const counts = 'Worst-case currents count on no more than that.'
    return f.facts.alone === true
      ? {
          title: 'Load larger than its supply',
          text: `${listed(loads)} may ask for ${amount(f, 'actual')}, and ${supplies} may give it ${amount(f, 'limit')} for long. ${counts}`,
          todo: 'Take batteries or a converter that may give so much, or a smaller load.',
        }
      : {
          title: 'Loads together beyond their supply',
          text: `With everything on, ${loads.length} loads ask for ${amount(f, 'actual')}, and ${supplies} may give ${amount(f, 'limit')} for long. ${counts}`,
          todo: 'See that they are never all on at once, or take batteries or a converter that may give so much.',
        }
  },
  R7: (f, d) => {
    const part = partName(d, textFact(f, 'part'))
    const high = f.level === 'danger'
    return {
      title: high ? 'Charge voltage too high' : 'Charge voltage too low',
      text: `${part} charges up to ${amount(f, 'actual')}, and the batteries at it have ${amount(f, 'limit')}: ${high ? 'it overcharges them' : 'it does not charge them'}.`,
      todo: 'Take a charger for their voltage, or set this one as the maker of the batteries states.',
    }
  },
  R4: (f, d) => ({
    title: 'Alternator too small',
    text: `From the starting circuit ${amount(f, 'actual')} may go to ${listed(listFact(f, 'chargers').map((id) => partName(d, id)))}; no more than ${amount(f, 'limit')} comes from ${listed(listFact(f, 'alternators').map((id) => partName(d, id)))}, the vehicle's own use not counted.`,
    todo: 'Set the chargers to less.',
  }),
}
