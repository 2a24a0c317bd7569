import type { Kind } from '../model/kind'
import { alternator } from './alternator'
import { alternatorCharger } from './alternatorcharger'
import { battery } from './battery'
import { breaker } from './breaker'
import { busbar } from './busbar'
import { chassisPoint } from './chassispoint'
import { combiner } from './combiner'
import { connector } from './connector'
import { dataExpander } from './dataexpander'
import { display } from './display'
import { fan } from './fan'
import { floatSwitch } from './floatswitch'
import { fridge } from './fridge'
import { fuseBar } from './fusebar'
import { fuseBlade } from './fuseblade'
import { fuseBlock } from './fuseblock'
import { fuseBoltIn } from './fuseboltin'
import { fuseCartridge } from './fusecartridge'
import { fuseLargeBlade } from './fuselargeblade'
import { gasSender } from './gassender'
import { inverter } from './inverter'
import { inverterCharger } from './invertercharger'
import { isolator } from './isolator'
import { junction } from './junction'
import { lamp } from './lamp'
import { load } from './load'
import { lowVoltageCutOut } from './lowvoltagecutout'
import { mainsCharger } from './mainscharger'
import { mainsDistribution } from './mainsdistribution'
import { mainsInlet } from './mainsinlet'
import { mainsLoad } from './mainsload'
import { monitorHub } from './monitorhub'
import { motor } from './motor'
import { panelSwitch } from './panelswitch'
import { pump } from './pump'
import { pvArray } from './pvarray'
import { relay } from './relay'
import { relayChangeover } from './relaychangeover'
import { relayLatching } from './relaylatching'
import { shunt } from './shunt'
import { socket } from './socket'
import { solarController } from './solarcontroller'
import { spareWay } from './spareway'
import { startingBattery } from './startingbattery'
import { stepDown } from './stepdown'
import { tankSender } from './tanksender'
import { temperatureSender } from './temperaturesender'
import { thermostat } from './thermostat'
import { voltageSense } from './voltagesense'

/** Every part kind, in the order of the shelf. A new kind is one file and one line here. */
export const KINDS: readonly Kind[] = [
  battery,
  startingBattery,
  alternator,
  pvArray,
  mainsCharger,
  alternatorCharger,
  solarController,
  inverter,
  inverterCharger,
  stepDown,
  busbar,
  fuseBar,
  fuseBlock,
  junction,
  connector,
  chassisPoint,
  fuseBlade,
  fuseLargeBlade,
  fuseBoltIn,
  fuseCartridge,
  breaker,
  isolator,
  panelSwitch,
  relay,
  relayChangeover,
  relayLatching,
  combiner,
  lowVoltageCutOut,
  shunt,
  voltageSense,
  lamp,
  pump,
  fan,
  fridge,
  socket,
  motor,
  load,
  spareWay,
  thermostat,
  floatSwitch,
  monitorHub,
  display,
  dataExpander,
  tankSender,
  temperatureSender,
  gasSender,
  mainsInlet,
  mainsDistribution,
  mainsLoad,
]

const byKey: ReadonlyMap<string, Kind> = new Map(KINDS.map((kind) => [kind.key, kind]))

/** The kind of a key; undefined for a key that this version does not know. O(1). */
export const kindOf = (key: string): Kind | undefined => byKey.get(key)
