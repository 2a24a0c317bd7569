import type { Kind } from '../model/kind'
import { battery } from './battery'
import { busbar } from './busbar'
import { fuseBlade } from './fuseblade'
import { fuseBlock } from './fuseblock'
import { fuseBoltIn } from './fuseboltin'
import { fuseCartridge } from './fusecartridge'
import { fuseLargeBlade } from './fuselargeblade'
import { isolator } from './isolator'
import { load } from './load'
import { relay } from './relay'
import { shunt } from './shunt'

/** Every part kind, in the order of the shelf. A new kind is one file and one line here. */
export const KINDS: readonly Kind[] = [
  battery,
  busbar,
  fuseBlock,
  fuseBlade,
  fuseLargeBlade,
  fuseBoltIn,
  fuseCartridge,
  isolator,
  relay,
  shunt,
  load,
]

const byKey: ReadonlyMap<string, Kind> = new Map(KINDS.map((kind) => [kind.key, kind]))

/** The kind of a key; undefined for a key that this version does not know. O(1). */
export const kindOf = (key: string): Kind | undefined => byKey.get(key)
