import type { StepCaution } from '../../calc/commissioning/step'

/** The usual cautions of the trade before a step that needs them. Common practice, no published source. */
export const STEP_CAUTIONS: Readonly<Record<StepCaution, string>> = {
  'everything-isolated':
    'Isolate everything first and lock or tag it: batteries, chargers, arrays, mains, engine.',
  'battery-short':
    'A battery drives thousands of amps into a short circuit. Insulated tools, terminals covered, no rings or watches.',
  arc: 'A DC arc does not go out by itself. Never pull a fuse, a plug or a lead under load: switch off first.',
  'array-live': 'A PV array is live in daylight. Cover it or break its circuit before you touch a lead.',
  mains: 'Everything at mains voltage is for licensed persons only.',
  moves: 'It may start at once. Keep hands, hair and cloth away from what turns or moves.',
  'runs-dry': 'Do not let a pump run dry: water in the tank, a tap open.',
  'gets-hot': 'It gets hot, or burns fuel. Clear space round it, and let it vent to the outside.',
  gas: 'Gas space: no sparks, no meter leads on live terminals, no switching in there. Air it first.',
  vented: 'This battery gives off gas that explodes. Air the space; no flame and no spark near it.',
  'no-ohms-on-live': 'An ohmmeter on a live circuit is destroyed. Check for 0 V first.',
  'frees-electronics':
    'Unplug or disconnect monitors, chargers, controllers and lamps with electronics: they spoil the reading.',
  engine: 'Engine running: exhaust to the outside, hand brake on, nothing near belts and fans.',
  'heavy-current':
    'Heavy current. Feel or scan the terminations as it flows; stop if anything gets hot or smells.',
}

/** The same in two or three words, where the whole sentence stands a little above. */
export const CAUTION_NAMES: Readonly<Record<StepCaution, string>> = {
  'everything-isolated': 'isolate first',
  'battery-short': 'battery short circuit',
  arc: 'DC arc',
  'array-live': 'array live in daylight',
  mains: 'mains: licensed persons only',
  moves: 'it may start',
  'runs-dry': 'not dry',
  'gets-hot': 'hot',
  gas: 'gas space',
  vented: 'explosive gas',
  'no-ohms-on-live': 'no ohms on live circuits',
  'frees-electronics': 'electronics unplugged',
  engine: 'engine running',
  'heavy-current': 'heavy current',
}
