import type { Conductor, ConductorId, Design, Part, TerminalRef } from '../model/design'
import { conductorById } from '../model/lookup'
import { namingFor } from '../model/naming'
import { applyAdd } from './add'
import { canReconnect } from './canjoin'
import type { Edit, EditOf } from './edit'
import { netsOf } from './nets'

/** A part put into a conductor as one edit, and the piece that begins behind it. */
export type Insertion = EditOf<'all'> & { readonly behind: Conductor }

/**
 * Puts a new part into a conductor, which then ends at the part; a new conductor of the same size and colour goes on from
 * there. How the length divides is not known: both pieces ask for theirs. The return stays with the piece that
 * reaches its consumer. null where the part is no fuse, breaker or contact with two ends, or the conductor carries something else.
 */
export function insertEdit(design: Design, add: EditOf<'add'>, into: ConductorId): Insertion | null {
  const whole = conductorById(design, into)
  const [part] = add.parts
  const added = applyAdd(design, add)
  if (!whole || !part || added.refused) return null
  const ends = throughEnds(added.design, part)
  if (!ends || canReconnect(added.design, into, 'to', ends[0])) return null
  const naming = namingFor(added.design)
  const { pathIn: _, ...same } = whole
  const behind: Conductor = {
    ...same,
    id: naming.conductorId(),
    number: naming.number(),
    from: ends[1],
    lengthM: null,
    remark: '',
    designCurrent: null,
    returnOf: null,
    path: [],
  }
  const edits: Edit[] = [
    add,
    { do: 'reconnect', conductor: into, end: 'to', to: ends[0] },
    { do: 'conductor', conductors: [into], set: { lengthM: null } },
    { do: 'join', conductor: behind },
  ]
  const back = design.conductors.find((c) => c.returnOf === into)
  if (back && [back.from.part, back.to.part].includes(whole.to.part))
    edits.push({ do: 'conductor', conductors: [back.id], set: { returnOf: behind.id } })
  return { do: 'all', edits, behind }
}

/** The two ends of a part that is one fuse or one contact and nothing else. */
function throughEnds(design: Design, part: Part): readonly [TerminalRef, TerminalRef] | null {
  const model = netsOf(design).electrical(part.id)
  const [branch, ...more] = model?.branches ?? []
  if (!branch || more.length > 0 || branch.kind === 'shunt' || model!.devices.length > 0) return null
  return [
    { part: part.id, terminal: branch.from },
    { part: part.id, terminal: branch.to },
  ]
}
