import type { Handover } from './handover'
import type { ProblemList } from './problems'
import { readRecord } from './record'
import { handoverSchema } from './schemahandover'

/** What the installer adds to the handover pack; what is faulty in it is left out and told. undefined: none. */
export const readHandover = (data: unknown, problems: ProblemList): Handover | undefined =>
  data === undefined
    ? undefined
    : ((readRecord(handoverSchema, data, ['handover'], problems, () => true) ?? undefined) as
        | Handover
        | undefined)
