import type { Celsius } from '../units'
import type { NetworkForm } from './form'
import type { MeterRole } from './meters'
import type { Operation } from './operation'

/** A network form as a file, with what may be asked of it besides. Documented in public/network-form.schema.json. */
export interface NetworkFile extends NetworkForm {
  /** What devices do at the operating point, where it is not the default. */
  readonly operating?: readonly ({ readonly device: string } & Operation)[]
  /** What shunts are for, where it is not to be told from the devices. */
  readonly meters?: readonly MeterStatement[]
  /** Temperature of conductors for the worst-case drops; resistances of the form are at 20 °C. Default 20. */
  readonly conductorCelsius?: Celsius
}

export interface MeterStatement {
  readonly shunt: string
  readonly role?: MeterRole
  /** Devices of the circuit that the shunt serves. */
  readonly members?: readonly string[]
}
