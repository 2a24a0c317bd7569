import type { PartBranch, SymbolDrawing, Terminal } from '../model/kind'
import type { FittingKey } from '../tables/fittings'
import type { Volts } from '../units'
import { letter, line, rect } from './draw'
import { number } from './field'
import { fastened } from './fitting'
import { leverLink, makeContact } from './sign'
import { inLine, terminal } from './terminal'

/** A contact that works by itself, from what it measures; its electronics take a little current to the negative. */

const W = 15
const H = 15
const Y = 5

export const sensedTerminals = (
  names: readonly [string, string],
  v: { readonly fitting: FittingKey },
): readonly Terminal[] => [
  ...inLine(W, Y, names, fastened(v.fitting)),
  terminal('down', 7.5, H, '31', 'supply, negative', 'negative', {
    mark: '31',
    use: 'out',
    ...fastened('blade 6.3'),
  }),
]

/** The same key as of a coil: one rule holds both against the voltage of their circuit. */
export const sensedVoltage = number(
  'Made for',
  'V',
  'Nominal voltage of the circuit that it is made for; where it takes several, the one it stands in.',
  { required: true, standard: [12, 24, 48] },
)

/** What works it: the voltage at its terminals `at` against terminal 31. */
export const byVoltage = (
  at: readonly string[],
  usually: 'closed' | 'open',
  v: { readonly closesV: Volts | null; readonly opensV: Volts | null },
): Pick<PartBranch, 'workedBy'> => ({
  workedBy: { by: 'voltage', usually, at, negative: '31', closesV: v.closesV, opensV: v.opensV },
})

/** The contact with the condition in a box that is linked to it: "U>", "U<". */
export const sensedSymbol = (condition: string): SymbolDrawing => ({
  w: W,
  h: H,
  marks: [
    ...makeContact(W, Y),
    leverLink(W / 2, 7.5, Y),
    rect(W / 2 - 3.75, 7.5, 7.5, 5),
    letter(W / 2, 10, condition, 2.5),
    line([W / 2, 12.5, W / 2, H]),
  ],
})
