import type { StepTells, TestStep } from '../../calc/commissioning/step'
import type { Design } from '../../model/design'
import { listed, partName } from '../names'

/** What a step is called, and what is done. */
export interface StepWords {
  readonly title: string
  readonly text: string
}

type Telling = (who: string, step: TestStep, design: Design) => StepWords

const said =
  (title: string, text: string): Telling =>
  (who) => ({ title: title.replace('…', who), text: text.replaceAll('…', who) })

const STEPS: Readonly<Record<StepTells, Telling>> = {
  conductors: said(
    'Conductors as drawn',
    'Each conductor against the schedule: number at both ends, size, colour, way, clear of edges and heat, held down.',
  ),
  terminations: said(
    'Terminations',
    'Each lug and clamp: right size for its conductor, crimped, covered, torqued to the maker’s figure and marked.',
  ),
  place: (_, { place = '' }, design) => ({
    title: place === '' ? 'Parts without a stated place' : `Place: ${place}`,
    text: `Parts as drawn, fastened, dry, cool and within reach; labels readable. ${partsIn(design, place)}`,
  }),
  'fuses-fitted': said(
    'Fuses fitted: …',
    'Each fuse as on the chart: form, rating, label of its way. Do not push them in yet.',
  ),
  'battery-place': said(
    'Battery fastened: …',
    'Strapped down, terminals covered, nothing loose near it, vented as its maker asks.',
  ),
  'mains-papers': said(
    'Mains part',
    'A licensed person has tested and signed for everything at mains voltage. It is not tested here.',
  ),
  'battery-polarity': said('Polarity: …', 'Red lead on plus, black lead on minus. The reading is above 0.'),
  'array-polarity': said(
    'Polarity: …',
    'At the leads of the array, still unplugged from the controller, in daylight. The reading is above 0.',
  ),
  apart: said(
    'Plus and minus are apart',
    'Fuses out, switches off, electronics unplugged. Wait until the reading stands still.',
  ),
  'off-frame': said(
    'Nothing on the frame',
    'No bond to the frame is drawn: neither pole may be joined to it.',
  ),
  frame: said('Bonds to the frame', 'From each bond to the negative post of the battery.'),
  returns: said(
    'Negative bars to the battery',
    'From each bar to the negative post of the battery, shunts included.',
  ),
  'way-round-shunt': said(
    'No way round …',
    'Lift the lead on the battery side of the shunt. Between its two sides nothing may join: a return on the wrong bar or on the frame would.',
  ),
  isolator: said(
    'Isolator: …',
    'Battery joined, everything that draws off. Measure behind it, open and closed.',
  ),
  fuses: (who, { readings }) =>
    readings.length > 1
      ? {
          title: `Fuses of ${who}`,
          text: 'With each fuse out, what lies behind it is dead. Then fit it and go on to the next.',
        }
      : {
          title: `Fuse or breaker: ${who}`,
          text: 'With it out or off, what lies behind it is as expected. Then fit it.',
        },
  'battery-alone': (who, { setting }) =>
    setting.loads === 'off'
      ? {
          title: `Battery at rest: ${who}`,
          text: 'No load that can be tested alone hangs on it. Its joints are not proved by this.',
        }
      : {
          title: `Battery under load: ${who}`,
          text: 'It carries a load, so that its own joints carry current.',
        },
  'alternator-alone': said('Alternator: …', 'Engine at fast idle.'),
  'charger-alone': said(
    'Source alone: …',
    'At its own terminals, while it charges and everything that draws is off.',
  ),
  'array-alone': said(
    'Array at its controller: …',
    'Where the array arrives, its breaker or plug closed, in daylight.',
  ),
  'converter-alone': said('Converter: …', 'At its output, with nothing drawn from it.'),
  load: said('Load: …', 'Switch it on alone.'),
  socket: said('Outlet: …', 'Plug in something that draws about what is expected.'),
  inverter: said(
    'Inverter: …',
    'Load it with mains appliances of known power, up to its rated power, through its outlets only.',
  ),
  relay: said('Relay: …', 'Work its switch on and off, and listen for the contact.'),
  changeover: said('Changeover relay: …', 'Work its switch on and off: each side is fed in its turn.'),
  latching: said('Latching relay: …', 'Pulse it closed, then open; it stays as it was left.'),
  combiner: said(
    'Battery combiner: …',
    'Raise and lower the voltage on one side, slowly, with an adjustable supply.',
  ),
  'hand-switch': said('Switch: …', 'On and off; its label says what it does.'),
  thermostat: said('Thermostat: …', 'Warm or cool its sensor past its setting.'),
  'float-switch': said('Float switch: …', 'Lift and lower the float by hand.'),
  'run-signal': said(
    'Interlock of …',
    'With the engine off it gives no charge; with the engine running it does. Nothing else starts it.',
  ),
  'shunt-zero': said('Zero of …', 'All that draws is off. What is left is what the monitor takes by itself.'),
  'shunt-clamp': said(
    'Display against clamp meter: …',
    'Zero the clamp meter first. Read both at the same moment.',
  ),
  'one-load': (_, step, design) => ({
    title: 'One load on',
    text: `${names(step, design)} alone: the shunts show what it draws, and what the monitor takes.`,
  }),
  'all-loads': said(
    'All loads on',
    'Switch on one after the other and watch the reading grow. Feel the terminations.',
  ),
  'far-load': said('Drop at …', 'Two meters, or one after the other without changing anything in between.'),
  charge: said(
    'Charge from …',
    'Into a battery that is not full. Discharge counts as plus: charging shows below 0, whatever sign the display uses.',
  ),
  'cut-out': said(
    'Low-voltage cut-out: …',
    'Lower the voltage on its sensing side, slowly, with an adjustable supply.',
  ),
  'inverter-stop': said(
    'Low-voltage stop of …',
    'As set, or as it stops on an adjustable supply. Restore the setting afterwards.',
  ),
  'charger-stop': said('Low-input stop of …', 'As set, or as it stops on an adjustable supply at its input.'),
  'data-link': said(
    'Data link of …',
    'The monitor lists it under its own name, and its figures move with what it measures.',
  ),
  sender: said(
    'Sender: …',
    'Change what it measures: fill or empty, warm or cool. The display follows, the right way round.',
  ),
  display: said(
    'Monitor: …',
    'It starts by itself, shows every device, and comes back after the power was off.',
  ),
  sense: said(
    'Voltage sense: …',
    'The display shows the voltage that the meter shows at the same two points.',
  ),
  'battery-alert': said(
    'Low-battery alert on …',
    'Read its setting, then set it above the present voltage for a moment: it warns.',
  ),
  'gas-alert': said(
    'Gas alert of …',
    'Tested as its maker says, with the maker’s test means only. Seen and heard where people are.',
  ),
  'tank-alert': said('Level alert of …', 'Set, and tried by moving the level or the setting past it.'),
  'temperature-alert': said(
    'Temperature alert of …',
    'Set, and tried by moving the temperature or the setting past it.',
  ),
}

export const stepWords = (step: TestStep, design: Design): StepWords =>
  STEPS[step.tells](names(step, design), step, design)

const names = ({ parts }: TestStep, design: Design): string => listed(parts.map((id) => partName(design, id)))

function partsIn({ parts }: Design, place: string): string {
  const here = parts.filter((p) => p.location === place).map((p) => p.designation)
  return `Here: ${listed(here, 40)}.`
}
